using GuideGen.Guide.Keeping;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Loading;

/// <summary>What was worked out about a guide, so that what follows from the same contents need not be worked out anew.</summary>
/// <remarks>What is kept is given out again as it is, so it must never change.</remarks>
public abstract class GuideMemory
{
    /// <summary>For a guide that is read once.</summary>
    public static GuideMemory None { get; } = new Nothing();

    /// <param name="what">What is made, and whatever it depends on apart from the contents.</param>
    /// <param name="frame">See <see cref="Model.GuideContent.Frame"/>.</param>
    /// <param name="make">Depends on nothing else.</param>
    public T Recall<T>(string what, Digest frame, Func<T> make)
        where T : notnull => Recall(what, frame, default, make);

    /// <inheritdoc cref="Recall{T}(string, Digest, Func{T})"/>
    /// <param name="page">See <see cref="Model.PageOrigin.Whole"/>.</param>
    public virtual T Recall<T>(string what, Digest frame, Digest page, Func<T> make)
        where T : notnull => make();

    /// <summary>What followed from a content in whichever run of this build of the tool, or is made now.</summary>
    /// <param name="content">Of all that <paramref name="make"/> depends on.</param>
    public virtual byte[] Recall(Digest content, Func<byte[]> make)
    {
        var key = new KeptKey(KeptKind.Made, default, content);
        if (TryFind(key, BytesForm.Only, out var kept)) return kept;
        var made = make();
        Keep(key, BytesForm.Only, made);
        return made;
    }

    /// <summary>A new reading of the guide begins.</summary>
    internal virtual void Turn()
    {
    }

    /// <summary>What was kept under a name at the reading before, whatever the contents were then.</summary>
    internal virtual T? Before<T>(string what)
        where T : class => null;

    /// <summary>Keeps something for <see cref="Before"/>.</summary>
    internal virtual void Keep(string what, object made)
    {
    }

    /// <param name="paths">All that <paramref name="read"/> reads; the first names the result.</param>
    /// <param name="circumstances">Whatever else the result depends on.</param>
    /// <param name="read">Asked with the files as they are at this moment.</param>
    internal virtual T Recall<T>(IGuideFiles from, string[] paths, string circumstances, Func<IGuideFiles, T> read)
        where T : notnull => read(from);

    /// <summary>Finds what was written down about a content, in whichever run of the tool.</summary>
    internal virtual bool TryFind<T>(KeptKey key, IKeptForm<T> form, out T value)
    {
        value = default!;
        return false;
    }

    /// <summary>Writes something down for <see cref="TryFind"/>.</summary>
    internal virtual void Keep<T>(KeptKey key, IKeptForm<T> form, T value)
    {
    }

    sealed class Nothing : GuideMemory;
}
