using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>The system's own Chromium. Nothing is downloaded.</summary>
static class Chromium
{
    static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

    static readonly string[] Quiet =
    [
        "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run",
    ];

    public static Task<IBrowser> Launch(IPlaywright playwright) => playwright.Chromium.LaunchAsync(new()
    {
        ExecutablePath = Find(),
        // Chromium refuses its sandbox to root, which test machines often are.
        Args = Environment.IsPrivilegedProcess ? ["--no-sandbox", .. Quiet] : Quiet,
    });

    static string Find()
    {
        if (Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } named) return named;
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        IEnumerable<string> candidates = ["/usr/bin/chromium", .. from name in Names from folder in folders select Path.Combine(folder, name)];
        return candidates.FirstOrDefault(File.Exists) ?? throw new InvalidOperationException(
            $"The browser tests need Chromium. Install it (for example the package 'chromium'), or set CHROMIUM to its path. Looked for {string.Join(", ", Names)} on PATH.");
    }
}
