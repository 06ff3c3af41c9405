namespace GuideGen.Testing;

/// <summary>How often a test tries things: a tenth as often where <c>.ci/mutants</c> runs it again for each mutant.</summary>
public static class Tries
{
    const int Share = 10;

    static readonly bool IsForMutants = Environment.GetEnvironmentVariable("StopAtFirst") == "true";

    public static int Of(int times) => IsForMutants ? times / Share : times;

    /// <summary>All of it, or every tenth from the first on.</summary>
    public static IEnumerable<T> Some<T>(IEnumerable<T> all) => IsForMutants ? all.Where((_, i) => i % Share == 0) : all;
}
