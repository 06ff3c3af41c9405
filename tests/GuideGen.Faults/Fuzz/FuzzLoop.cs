using System.Diagnostics;
using System.Globalization;

namespace GuideGen.Faults.Fuzz;

/// <summary>Gives millions of texts to everything that reads what strangers write. A crash, or a promise that is not kept, is printed with its text.</summary>
static class FuzzLoop
{
    const int Million = 1_000_000;

    /// <param name="times">Executions in thousandths of the usual ones; 1,000 if it is 0.</param>
    public static bool Run(TextWriter output, int times)
    {
        var isSound = true;
        long all = 0;
        output.WriteLine("| reader | executions | seconds | crashes |\n| --- | ---: | ---: | ---: |");
        foreach (var target in Readers.All())
        {
            var (count, faults) = ((long)target.Usual * (times == 0 ? 1_000 : times) / 1_000, 0);
            var watch = Stopwatch.StartNew();
            for (long i = 0; i < count && faults < 20; i++) faults += Try(target) ? 0 : 1;
            isSound &= faults == 0;
            all += count;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {target.Name} | {count:N0} | {watch.Elapsed.TotalSeconds:N0} | {faults} |"));
            output.Flush();
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| all ({(double)all / Million:N1} million) | {all:N0} | | |"));
        return isSound;
    }

    static bool Try(FuzzTarget target)
    {
        var text = target.Texts.Next();
        string why;
        try
        {
            if (target.Holds(text)) return true;
            why = "a promise is not kept";
        }
#pragma warning disable CA1031 // Whatever is thrown is what is looked for.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            why = fault.GetType().Name + ": " + fault.Message + " " + fault.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("GuideGen", StringComparison.Ordinal))?.Trim();
        }

        Console.Error.WriteLine($"{target.Name}: {why}\n  {System.Text.Json.JsonSerializer.Serialize(text)}");
        return false;
    }
}

/// <param name="Usual">Executions of a whole run.</param>
/// <param name="Holds">True if what the reader promises of any text holds for this one.</param>
sealed record FuzzTarget(string Name, int Usual, Mutator Texts, Func<string, bool> Holds);
