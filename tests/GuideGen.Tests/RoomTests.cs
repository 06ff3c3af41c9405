using System.Xml.Linq;
using GuideGen.Testing;

namespace GuideGen.Tests;

/// <summary>The rooms of the house use each other in one direction only; a new arrow is a decision, made here.</summary>
public sealed class RoomTests
{
    static readonly Dictionary<string, string[]> Arrows = new()
    {
        ["GuideGen"] = ["GuideGen.Site"],
        ["GuideGen.Site"] = ["GuideGen.Search", "GuideGen.Diagnosis", "GuideGen.Guide"],
        ["GuideGen.Search"] = ["GuideGen.Codes"],
        // How well a case is proved is a matter of the case, and an inspection compares it with what its sender says.
        ["GuideGen.Guide"] = ["GuideGen.Codes", "GuideGen.Diagnosis"],
        ["GuideGen.Diagnosis"] = [],
        ["GuideGen.Codes"] = [],
    };

    public static TheoryData<string> Rooms => new(Directory.GetDirectories(Repository.PathTo("src")).Select(Path.GetFileName)!);

    [Theory, MemberData(nameof(Rooms))]
    public void A_room_uses_only_the_rooms_below_it(string room)
    {
        var project = XDocument.Load(Repository.PathTo("src", room, room + ".csproj"));
        var used = project.Descendants("ProjectReference").Select(e => Path.GetFileNameWithoutExtension((string)e.Attribute("Include")!));

        Assert.Subset(Arrows[room].ToHashSet(), used.ToHashSet());
    }
}
