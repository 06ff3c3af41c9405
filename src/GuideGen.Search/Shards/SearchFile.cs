using System.Collections.Immutable;
using System.Security.Cryptography;

namespace GuideGen.Search.Shards;

/// <summary>One script file of the search: its name tells its content, so it may be kept for ever once loaded.</summary>
public sealed record SearchFile(string Name, ReadOnlyMemory<byte> Script);

/// <summary>All script files of one guide's search.</summary>
/// <param name="Head">Name of the file that is loaded first and knows the others.</param>
/// <param name="Files">All of them, the head too.</param>
public sealed record SearchFiles(string Head, ImmutableArray<SearchFile> Files);

/// <summary>A file before it has its name: what the script hands to <c>GuideGen.search.take</c>, and under which key.</summary>
sealed record Shard(string Key, ReadOnlyMemory<byte> Script)
{
    /// <summary>First 32 bits of SHA-256: it only has to differ from the same shard's earlier contents.</summary>
    public string Hash { get; } = Convert.ToHexStringLower(SHA256.HashData(Script.Span).AsSpan(..4));

    public SearchFile File => new($"{Key}-{Hash}.js", Script);
}
