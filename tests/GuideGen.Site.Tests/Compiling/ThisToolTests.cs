using System.Reflection;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>A site made by another build of the tool, or with another version of a library, is never taken for one of this build.</summary>
public sealed class ThisToolTests
{
    [Fact]
    public void Every_library_that_has_a_hand_in_the_files_is_part_of_its_identity()
    {
        var known = ThisTool.Hands.Select(h => h.Assembly.GetName().Name).ToHashSet();
        var used = new HashSet<string?>();
        var open = new Stack<Assembly>([typeof(SiteCompiler).Assembly]);
        while (open.TryPop(out var next))
        {
            if (!used.Add(next.GetName().Name) || !next.GetName().Name!.StartsWith("GuideGen.", StringComparison.Ordinal)) continue;
            foreach (var reference in next.GetReferencedAssemblies().Where(r => !r.Name!.StartsWith("System.", StringComparison.Ordinal))) open.Push(Assembly.Load(reference));
        }

        Assert.Contains("GuideGen.Codes", used);
        Assert.Empty(used.Except(known));
    }
}
