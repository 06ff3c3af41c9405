using System.Collections.Immutable;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Asking;

/// <summary>The entries of one kind as one file asks for them.</summary>
public sealed class AskedShelf<T>
    where T : class, IGuideEntry
{
    readonly Shelf<T> shelf;
    readonly string all;
    readonly AskedItems? asked;

    internal AskedShelf(Shelf<T> shelf, ContentKind kind, AskedItems? asked) => (this.shelf, all, this.asked) = (shelf, GuideItem.All(kind), asked);

    /// <inheritdoc cref="Shelf{T}.All"/>
    public ImmutableArray<T> All
    {
        get
        {
            asked?.Note(all);
            return shelf.All;
        }
    }

    /// <returns>Null if there is no such entry. Which there are is known without asking.</returns>
    public T? Find(string slug)
    {
        var found = shelf.Find(slug);
        if (found is not null) asked?.Note(all + slug);
        return found;
    }
}
