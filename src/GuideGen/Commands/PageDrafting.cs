using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Site.Drafting;

namespace GuideGen.Commands;

/// <summary>Asks for what a new page needs, and writes it.</summary>
/// <param name="named">The guide as it was named on the command line; null if it was not.</param>
sealed class PageDrafting(Terminal terminal, ContentKind kind, string folder, string? named)
{
    readonly RecordOutline outline = GuideShapes.Of(kind);

    public int Draft(string name, IReadOnlyList<string> settings)
    {
        var slug = DraftSlug.Of(kind, name);
        if (!SlugForm.IsGood(kind, slug)) return DraftCommand.Refuse(terminal, $"'{name}' cannot become an address. {(kind is ContentKind.Code ? "Name a code, such as P1A42." : "Use letters and digits.")}");
        var path = Path.Combine("content", NameKinds.Folder(kind), slug + NameKinds.Ending(kind));
        if (File.Exists(Path.Combine(folder, path))) return DraftCommand.Refuse(terminal, $"{path.Replace('\\', '/')} is there already.");
        var answers = new Dictionary<string, string>();
        if (outline.Fields.Any(f => f.Key == "name")) answers["name"] = name;
        foreach (var setting in settings)
        {
            if (Objection(setting) is { } objection) return DraftCommand.Refuse(terminal, objection);
            answers[setting.Split('=')[0]] = setting[(setting.IndexOf('=', StringComparison.Ordinal) + 1)..];
        }

        var guide = GuideLoader.Load(new FolderFiles(folder)).Guide;
        if (!terminal.IsPiped) Ask(answers, guide);
        return Write(path, PageDraft.Write(kind, answers, guide));
    }

    string? Objection(string setting)
    {
        var key = setting.Split('=')[0];
        var known = outline.Fields.Where(f => f.IsRequired).Select(f => f.Key).ToList();
        if (!setting.Contains('=', StringComparison.Ordinal)) return $"'{setting}' is not KEY=VALUE.";
        return known.Contains(key) ? null : $"a {NameKinds.Word(kind)} has no key '{key}' that can be set.{NearestName.Question(key, known)} Known are {string.Join(", ", known)}.";
    }

    void Ask(Dictionary<string, string> answers, GuideContent guide)
    {
        terminal.Out.WriteLine($"An empty answer leaves a blank, {Blanks.Marker}, to fill later.");
        foreach (var field in PageDraft.Questions(kind).Where(f => !answers.ContainsKey(f.Key)))
        {
            terminal.Out.WriteLine($"{field.Key}: {string.Join('\n', PageDraft.Advice(field, guide))}");
            if (Answer(field) is { } answer) answers[field.Key] = answer;
        }
    }

    /// <summary>Asks again for as long as the answer would be an error on the page.</summary>
    string? Answer(IField field)
    {
        while (true)
        {
            terminal.Out.Write("> ");
            var answer = terminal.In.ReadLine()?.Trim();
            if (string.IsNullOrEmpty(answer)) return null;
            var objection = DraftAnswer.Objections(new FolderFiles(folder), kind, field.Key, answer).FirstOrDefault();
            if (objection is null) return answer;
            terminal.Out.WriteLine($"{objection.Message} {objection.Hint}".TrimEnd());
        }
    }

    int Write(string path, string text)
    {
        var file = Path.Combine(folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        using (var stream = new FileStream(file, FileMode.CreateNew)) stream.Write(System.Text.Encoding.UTF8.GetBytes(text));
        var schemas = Path.Combine(folder, SchemaCommand.Folder);
        // The first line of the page sends an editor there.
        if (!Directory.Exists(schemas)) SchemaCommand.Write(schemas);
        var left = Blanks.CountIn(new SourceText(path, text));
        terminal.Out.WriteLine($"{path.Replace('\\', '/')} has {left} {(left == 1 ? "blank" : "blanks")} to fill. What is left to do says: {terminal.Call} inspect{(named is null ? "" : " " + named)}");
        return ExitCode.Good;
    }
}
