namespace GuideGen.Testing;

/// <summary>How often a test tries random things: a tenth as often where <c>.ci/mutants</c> runs it again for each mutant.</summary>
public static class Tries
{
    static readonly bool IsForMutants = Environment.GetEnvironmentVariable("StopAtFirst") == "true";

    public static int Of(int times) => IsForMutants ? times / 10 : times;
}
