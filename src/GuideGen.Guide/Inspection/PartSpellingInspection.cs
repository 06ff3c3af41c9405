using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;

namespace GuideGen.Guide.Inspection;

/// <summary>A part has one name: text that means the same words writes them as the part's own page does, hyphens and blanks included.</summary>
sealed class PartSpellingInspection : IPageInspection
{
    public Func<IGuideEntry, IEnumerable<Finding>> For(GuideContent guide)
    {
        var names = guide.Parts.All.Select(p => p.Name.Value).Where(n => n.Contains('-', StringComparison.Ordinal) || n.Contains(' ', StringComparison.Ordinal)).ToList();
        var others = guide.Parts.All.SelectMany(p => p.Also).Select(a => a.Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var finder = new PhraseFinder<string>(names.Select(n => (n, n)));
        var bare = names.ToLookup(Bare, StringComparer.Ordinal);
        return entry => InBody(entry, finder).Concat(entry is Fault fault ? InRepair(fault, bare) : []).Where(f => !others.Contains(f.Span.Written));
    }

    static IEnumerable<Finding> InBody(IGuideEntry entry, PhraseFinder<string> finder)
    {
        var words = Words.In(entry.Origin.Source.Text, [.. entry.Origin.Body.Runs.Where(r => !r.IsHeading)]);
        return
            from found in finder.Find(words)
            let span = entry.Origin.Source.Span(found.Start, found.Length)
            where !IsWrittenAs(span.Written, found.Tag)
            select Rules.PartSpelling.At(span, OneLine(span.Written), found.Tag).Concerning(found.Tag);
    }

    static IEnumerable<Finding> InRepair(Fault fault, ILookup<string, string> names) =>
        from bought in fault.Repair.Parts.Concat(fault.Repair.Consumables)
        let meant = names[Bare(bought.Name.Value)].FirstOrDefault()
        where meant is not null && !string.Equals(meant, bought.Name.Value, StringComparison.OrdinalIgnoreCase)
        select Rules.PartSpelling.At(bought.Name.Span, bought.Name.Value, meant).Concerning(meant);

    /// <summary>A plural, a line break and the capital at the head of a sentence are no other spelling.</summary>
    static bool IsWrittenAs(string written, string name)
    {
        var (line, plural) = (OneLine(written), name.EndsWith('y') ? name[..^1] : name);
        return line.StartsWith(plural, StringComparison.OrdinalIgnoreCase) && line.Length <= name.Length + 2;
    }

    static string OneLine(string text) => string.Join(' ', text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries));

    static string Bare(string name) => string.Concat(Words.Of(name));
}
