using GuideGen.Faults.Fuzz;
using GuideGen.Faults.Reading;
using GuideGen.Faults.Writing;

// Each fault prints one Markdown table and ends with 1 if anything did not hold; they are run by hand and never as tests.
var faults = new Dictionary<string, Func<TextWriter, int, bool>>
{
    ["fuzz"] = FuzzLoop.Run,
    ["kill"] = KilledCompiles.Run,
    ["slow"] = SlowPages.Run,
    ["trouble"] = TroubledCompiles.Run,
};

if (args.Length is 0 or > 2 || !faults.TryGetValue(args[0], out var fault) || (args.Length == 2 && !int.TryParse(args[1], out _)))
{
    await Console.Error.WriteLineAsync("Name one of these, and if you like how often: " + string.Join(", ", faults.Keys));
    return 2;
}

return fault(Console.Out, args.Length == 2 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 0) ? 0 : 1;
