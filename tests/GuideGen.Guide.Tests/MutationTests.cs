using System.Text;
using CsCheck;
using GuideGen.Guide.Findings;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests;

/// <summary>Whatever an author may slip into a file becomes findings at places that exist, never an exception.</summary>
public sealed class MutationTests
{
    static readonly string[] Paths = [.. BaseGuide.Files().Keys.Order(StringComparer.Ordinal)];

    static readonly string[] Slips =
    [
        "", "[", "]", "{", "}", ":", ": ", "- ", "\"", "'", "|", ">", "&a ", "*a", "!t ", "#", "---\n", "...\n", "\t", "\r", "\n", "\u2028", "?", "%", "@", "`",
        "```\n", "![](", "](", "**", "P0299", "p0", "\\", "<", "~", "null", "1e9", "é", "🚐", "\n  ", "\n- ", "\n## ", "\uFEFF", "\0",
    ];

    static readonly Gen<(string Path, (double At, int Cut, string Put)[] Changes)> Mutations = Gen.Select(
        Gen.Int[0, Paths.Length - 1].Select(i => Paths[i]),
        Gen.Select(Gen.Double.Unit, Gen.Int[0, 12], Gen.Int[0, Slips.Length - 1].Select(i => Slips[i])).Array[1, 4]);

    [Fact]
    public void A_slip_anywhere_in_a_guide_is_findings_and_never_an_exception() => Mutations.Sample(
        mutation =>
        {
            var findings = BaseGuide.InspectWith(mutation.Path, Mutate(BaseGuide.Text(mutation.Path), mutation.Changes));
            FindingFormatter.WriteText(TextWriter.Null, findings);
            return findings.All(f => f.Span.Start >= 0 && f.Span.Start + f.Span.Length <= f.Span.Source.Text.Length);
        },
        iter: Tries.Of(300));

    static string Mutate(string original, (double At, int Cut, string Put)[] changes)
    {
        var text = new StringBuilder(original);
        foreach (var (at, cut, put) in changes)
        {
            var place = (int)(at * text.Length);
            text.Remove(place, Math.Min(cut, text.Length - place)).Insert(place, put);
        }

        return text.ToString();
    }
}
