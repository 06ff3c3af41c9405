using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using GuideGen.Guide.Findings;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Preview;

/// <summary>Answers the requests of a preview.</summary>
sealed class PreviewAnswers(Func<PreviewSite> current, PreviewEvents events, Uri root)
{
    const string Own = "_preview/";
    const int MostFindings = 50;

    static readonly byte[] Script = PreviewResources.Read("overlay.js");
    static readonly byte[] Style = PreviewResources.Read("overlay.css");

    /// <summary>What pages are told: the version, whether it is good, and the findings in words.</summary>
    public string News()
    {
        var site = current();
        var findings = site.Findings.Where(f => f.Severity != Severity.Note).OrderByDescending(f => f.Severity).Take(MostFindings)
            .Select(f => new PreviewFinding(SeverityWords.Key(f.Severity), FindingFormatter.ToLine(f), f.Hint));
        var news = new PreviewNews(site.Version, site.IsGood, site.Words[site.IsGood ? "preview.notes" : "preview.errors"], [.. findings]);
        return JsonSerializer.Serialize(news, SiteJson.Default.PreviewNews);
    }

    public async Task Answer(HttpListenerContext context)
    {
        var response = context.Response;
        try
        {
            response.Headers["Cache-Control"] = "no-store";
            response.Headers["X-Content-Type-Options"] = "nosniff";
            response.Headers["Cross-Origin-Resource-Policy"] = "same-origin";
            if (WhyNot(context.Request) is { } status) response.StatusCode = (int)status;
            else await Answer(context, Uri.UnescapeDataString(context.Request.Url!.AbsolutePath)[1..]);
            response.Close();
        }
        catch (Exception fault) when (fault is HttpListenerException or IOException or ObjectDisposedException or InvalidOperationException)
        {
            // The page was closed while it was sent.
            response.Abort();
        }
    }

    /// <summary>A page of another site may reach this machine, too, by a name that leads here: only this address may ask.</summary>
    HttpStatusCode? WhyNot(HttpListenerRequest request)
    {
        if (request.HttpMethod is not ("GET" or "HEAD")) return HttpStatusCode.MethodNotAllowed;
        if (request.UserHostName != root.Authority) return HttpStatusCode.Forbidden;
        if (request.Headers["Origin"] is { } origin && origin != root.GetLeftPart(UriPartial.Authority)) return HttpStatusCode.Forbidden;
        return IsOfAnotherPage(request) ? HttpStatusCode.Forbidden : null;
    }

    /// <summary>
    /// What a browser says of who is asking (W3C Fetch Metadata Request Headers): a page of another origin may lead its reader here
    /// by a link, and may not load or frame anything.
    /// </summary>
    static bool IsOfAnotherPage(HttpListenerRequest request) =>
        request.Headers["Sec-Fetch-Site"] is not (null or "same-origin" or "none")
        && (request.Headers["Sec-Fetch-Mode"], request.Headers["Sec-Fetch-Dest"]) != ("navigate", "document");

    Task Answer(HttpListenerContext context, string address) => address switch
    {
        Own + "events" => events.Follow(context.Response),
        Own + "overlay.js" => Send(context, HttpStatusCode.OK, address, Script),
        Own + "overlay.css" => Send(context, HttpStatusCode.OK, address, Style),
        // A preview must always show the newest, so its worker keeps nothing.
        ServiceWorker.Address => Send(context, HttpStatusCode.OK, address, "self.addEventListener(\"install\", () => self.skipWaiting());\n"u8.ToArray()),
        "" => AnswerPage(context, Addresses.Home),
        _ => AnswerPage(context, address.EndsWith('/') ? address + Addresses.Home : address),
    };

    async Task AnswerPage(HttpListenerContext context, string address)
    {
        try
        {
            var files = current().Files;
            var found = files?.Find(address);
            var bytes = found ?? files?.Find(Addresses.NotFound) ?? Plain(current().Words["preview.none"]);
            await Send(context, found is null ? HttpStatusCode.NotFound : HttpStatusCode.OK, found is null ? Addresses.NotFound : address, bytes);
        }
        catch (Exception fault) when (fault is ThemeException or IOException)
        {
            await Send(context, HttpStatusCode.InternalServerError, Addresses.NotFound, Plain(fault.Message));
        }
    }

    byte[] Plain(string text) => Encoding.UTF8.GetBytes($"<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>{HtmlText.Escape(current().Words["preview.errors"])}</title></head><body><p>{HtmlText.Escape(text)}</p>\n</body></html>");

    static async Task Send(HttpListenerContext context, HttpStatusCode status, string address, byte[] bytes)
    {
        var type = PreviewResources.TypeOf(address);
        var tag = TagOf(bytes);
        var sent = type.StartsWith("text/html", StringComparison.Ordinal) ? WithOverlay(bytes, tag) : bytes;
        context.Response.Headers["ETag"] = tag;
        context.Response.StatusCode = (int)status;
        context.Response.ContentType = type;
        context.Response.ContentLength64 = sent.Length;
        if (context.Request.HttpMethod != "HEAD") await context.Response.OutputStream.WriteAsync(sent);
    }

    /// <summary>The same for the same bytes, by which an open page knows whether an edit was about it.</summary>
    static string TagOf(byte[] bytes) => $"\"{Convert.ToHexStringLower(SHA256.HashData(bytes)[..8])}\"";

    static byte[] WithOverlay(byte[] page, string tag)
    {
        var end = page.AsSpan().LastIndexOf("</body>"u8);
        if (end < 0) return page;
        var additions = $"<link rel=\"stylesheet\" href=\"/{Own}overlay.css\"><script src=\"/{Own}overlay.js\" data-page='{tag}'></script>\n";
        return [.. page[..end], .. Encoding.UTF8.GetBytes(additions), .. page[end..]];
    }
}

/// <summary>What open pages are told.</summary>
sealed record PreviewNews(int Version, bool IsGood, string Title, PreviewFinding[] Findings);

sealed record PreviewFinding(string Severity, string Line, string Hint);
