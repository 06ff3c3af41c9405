using GuideGen.Site.Writing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Writing;

public sealed class FolderExchangeTests
{
    [Fact]
    public void Two_folders_change_places_in_one_step_on_Linux()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "renameat2(2) is a call of Linux");
        using var temp = new TempFolder();
        temp.Write("one/a", "1");
        temp.Write("two/b", "2");

        Assert.True(FolderExchange.TryExchange(temp.PathTo("one"), temp.PathTo("two")));
        Assert.True(File.Exists(temp.PathTo("one", "b")) && File.Exists(temp.PathTo("two", "a")));
    }

    [Fact]
    public void Nothing_changes_when_one_of_them_is_missing()
    {
        using var temp = new TempFolder();
        temp.Write("one/a", "1");

        Assert.False(FolderExchange.TryExchange(temp.PathTo("one"), temp.PathTo("two")));
        Assert.True(File.Exists(temp.PathTo("one", "a")));
    }
}
