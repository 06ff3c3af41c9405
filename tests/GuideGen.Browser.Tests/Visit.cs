using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>One visitor's page, and what the browser complained of or asked for elsewhere meanwhile.</summary>
public sealed class Visit : IAsyncDisposable
{
    readonly IBrowserContext context;
    readonly string root;
    readonly List<string> complaints = [];
    readonly Func<Task> beforeLeaving;

    /// <param name="beforeLeaving">Done before a page is left for another one or for good.</param>
    public Visit(IBrowserContext context, IPage page, string root, Func<Task> beforeLeaving)
    {
        (this.context, Page, this.root, this.beforeLeaving) = (context, page, root, beforeLeaving);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning") complaints.Add($"{message.Type}: {message.Text}");
        };
        page.PageError += (_, error) => complaints.Add("uncaught: " + error);
        page.RequestFailed += (_, request) => complaints.Add($"failed: {request.Url}");
        page.Response += (_, response) =>
        {
            if (response.Status >= 400) complaints.Add($"{response.Status}: {response.Url}");
        };
        context.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(root, StringComparison.Ordinal)) complaints.Add("left the site: " + request.Url);
        };
    }

    public IPage Page { get; }

    /// <summary>Where the page is, from the site's root.</summary>
    public string Address => Page.Url[root.Length..];

    public async Task Open(string address)
    {
        await beforeLeaving();
        await Page.GotoAsync(root + address);
    }

    /// <summary>Follows a link, and waits until the address has changed; what is looked for there is waited for by itself.</summary>
    public async Task Follow(ILocator link, string address)
    {
        await link.ClickAsync();
        await IsAt(address);
    }

    public Task IsAt(string address) => Assertions.Expect(Page).ToHaveURLAsync(root + address, new() { Timeout = 30_000 });

    /// <summary>No error in the console, no missing file, no request to anywhere else.</summary>
    public void IsClean() => Assert.Empty(complaints);

    public async ValueTask DisposeAsync()
    {
        await beforeLeaving();
        await context.DisposeAsync();
    }
}
