using GuideGen.Guide.Text;
using GuideGen.Site.Asking;

namespace GuideGen.Site.Rendering;

/// <summary>All that the bytes of a file follow from: what is known before they are made, and what is asked for while they are.</summary>
/// <remarks>
/// What is asked for first follows from what is known before, and whatever is asked for next from that and the answers. So while a file
/// that was made has the same digest by what it asked for then, it would ask for the same again, and come out the same.
/// </remarks>
public sealed class FileBasis
{
    // Of ten thousand pages a preview draws one, and asks for none of their digests.
    readonly Lazy<Digest> known;
    readonly Lazy<ItemDigests>? items;
    readonly AskedItems? asked;

    /// <param name="known">Of all that the file follows from, the tool included.</param>
    public FileBasis(Digest known) => this.known = new(known);

    /// <param name="known">Of all that is known beforehand, the tool included.</param>
    /// <param name="items">Of what can be asked for.</param>
    /// <param name="asked">Takes it down while the file is made.</param>
    internal FileBasis(Func<Digest> known, Lazy<ItemDigests> items, AskedItems asked) => (this.known, this.items, this.asked) = (new(known), items, asked);

    /// <summary>What was asked for, as the file was made; empty before that, and if nothing was.</summary>
    public string Asked => asked?.ToString() ?? "";

    /// <summary>The digest of all that the file follows from, if this is what it asks for.</summary>
    /// <param name="asked">See <see cref="Asked"/>.</param>
    /// <returns>Null where something is no name that a file can ask for.</returns>
    public Digest? DigestBy(ReadOnlySpan<char> asked)
    {
        if (asked.IsEmpty) return known.Value;
        using var all = new Digester();
        all.Add(known.Value);
        foreach (var range in asked.Split(AskedItems.Separator))
        {
            if (items?.Value.Of(asked[range]) is not { } digest) return null;
            all.Add(asked[range]).Add(digest);
        }

        return all.Take();
    }
}
