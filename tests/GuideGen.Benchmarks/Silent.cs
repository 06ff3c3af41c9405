using GuideGen.Site;

namespace GuideGen.Benchmarks;

/// <summary>Nobody is told how far a compile is.</summary>
sealed class Silent : IProgress<CompileStage>
{
    public void Report(CompileStage value)
    {
    }
}
