using System.Runtime.InteropServices;

namespace GuideGen.Site.Writing;

/// <summary>Exchanges two folders in one step where the system can: Linux renameat2(2), macOS renamex_np(2).</summary>
static partial class FolderExchange
{
    const int CurrentFolder = -100;
    const uint LinuxExchange = 2;
    const uint MacSwap = 2;

    /// <returns>False if the system or the volume cannot do it; both folders are then as they were.</returns>
    public static bool TryExchange(string one, string other)
    {
        try
        {
            if (OperatingSystem.IsLinux()) return RenameAt2(CurrentFolder, one, CurrentFolder, other, LinuxExchange) == 0;
            return OperatingSystem.IsMacOS() && RenameX(one, other, MacSwap) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            // Small C libraries leave the call out.
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "renameat2", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenameAt2(int oldFolder, string oldPath, int newFolder, string newPath, uint flags);

    [LibraryImport("libc", EntryPoint = "renamex_np", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenameX(string from, string to, uint flags);
}
