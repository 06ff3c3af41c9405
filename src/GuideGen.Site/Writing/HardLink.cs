using System.Runtime.InteropServices;

namespace GuideGen.Site.Writing;

/// <summary>Gives a file a second name on its volume: link(2) of POSIX, CreateHardLink of Windows.</summary>
static partial class HardLink
{
    /// <summary>The file under both names; where the system or the volume cannot link, a copy of it.</summary>
    /// <param name="to">Not there yet, and on the same volume.</param>
    /// <returns>False if neither can be had, such as when the file is gone; what is left of a copy may be written over.</returns>
    public static bool TryCreateOrCopy(string from, string to)
    {
        if (TryCreate(from, to)) return true;
        try
        {
            File.Copy(from, to, overwrite: true);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    static bool TryCreate(string from, string to) => OperatingSystem.IsWindows() ? CreateHardLink(to, from, 0) : Link(from, to) == 0;

    [LibraryImport("libc", EntryPoint = "link", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Link(string from, string to);

    [LibraryImport("kernel32", EntryPoint = "CreateHardLinkW", StringMarshalling = StringMarshalling.Utf16)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool CreateHardLink(string to, string from, nint security);
}
