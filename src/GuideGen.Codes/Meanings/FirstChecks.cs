using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>Checks that fit a kind of condition whatever the vehicle: common workshop practice, no standard behind it.</summary>
/// <param name="Steps">Cheap and safe ones first.</param>
/// <param name="Cautions">Of these steps; what the subject itself asks for comes from the entry.</param>
public sealed record FirstChecks(ImmutableArray<string> Steps, ImmutableArray<string> Cautions)
{
    const string IgnitionOff = "Switch the ignition off before you part a connector, and follow the maker's procedure before you disconnect the battery.";
    const string NoPiercing = "Probe from the back of the connector with fine pins; do not pierce wires or widen terminals.";
    const string EngineRunning = "With the engine running keep hands, hair and sleeves away from belts, fans and hot parts, and never run it in a closed room.";
    const string MovingParts = "Parts driven by motors can move without warning and trap fingers: ignition off before you reach in.";
    const string HotSystems = "Let the engine and exhaust cool first; never open a hot cooling system.";

    public static readonly FirstChecks Wiring = new(
        [
            "Look at the connector and the wiring for rubbed, broken, green or wet places, and for pins that are pushed back.",
            "Check the fuse and the ground point that the part shares with others; codes of neighbours point there.",
            "Measure supply, ground and signal at the connector and compare with the maker's figures before you buy a part.",
        ],
        [IgnitionOff, NoPiercing]);

    public static readonly FirstChecks Flicker = new(
        [
            "Look for a loose connector or ground, and for wiring that rubs or is pulled when the engine moves.",
            "Watch the live value while you gently move the wiring and the connector, cold and warm.",
            "Check the battery voltage while starting: a dip can make good sensors look bad.",
        ],
        [IgnitionOff, EngineRunning]);

    public static readonly FirstChecks Plausibility = new(
        [
            "Compare the live value with what must be true: a cold engine and the air around it have the same temperature, a standing vehicle no speed.",
            "Look at the part and its surroundings: dirt, leaks, hoses, loose mounting, wrong part fitted.",
            "Check connector and wiring, then the part by the maker's figures.",
        ],
        [IgnitionOff, EngineRunning]);

    public static readonly FirstChecks Drive = new(
        [
            "Check that nothing blocks the part by hand or by eye: dirt, carbon, ice, a bent rod, a split vacuum hose.",
            "Check supply, ground and drive at its connector.",
            "Let a suitable reader move it and watch whether it follows.",
        ],
        [IgnitionOff, MovingParts]);

    public static readonly FirstChecks Quantity = new(
        [
            "Make sure the value is real: compare it with a second sensor or a gauge.",
            "Check what makes the value: level, leaks, filters, pump, hoses and whatever controls them.",
            "Only then suspect the sensor.",
        ],
        [EngineRunning, HotSystems]);

    public static readonly FirstChecks Heat = new(
        [
            "Stop in a safe place and let it cool; driving on can destroy the part.",
            "Check level, leaks and flow of what cools it, and whether its fan or pump runs.",
            "Compare the reading with reality when cold: a wrong sensor also looks like heat.",
        ],
        [HotSystems, "An electric fan can start with the engine off."]);

    public static readonly FirstChecks Supply = new(
        [
            "Measure the battery at rest, while starting and with the engine running.",
            "Check battery terminals, ground straps and the fuse or relay that feeds the part.",
            "Clear the codes after the supply is right and see what comes back.",
        ],
        [
            "Batteries give off explosive gas: no flame or spark, wear eye protection, take the negative terminal off first.",
            IgnitionOff,
        ]);

    public static readonly FirstChecks Mixture = new(
        [
            "Listen and look for air leaks at intake hoses, vacuum hoses and the exhaust ahead of the sensor.",
            "Compare the fuel trims at idle and at higher speed: worse at idle suggests an air leak, worse under load suggests fuel supply.",
            "Check the air filter, the air flow reading and the fuel pressure.",
        ],
        [EngineRunning, "Fuel catches fire easily and can be under high pressure: do not loosen fuel lines without the maker's procedure."]);

    public static readonly FirstChecks Combustion = new(
        [
            "If the engine shakes and the warning lamp flashes, take the load off: raw fuel overheats the catalytic converter.",
            "See whether one cylinder or all are named; for one, swap what can be swapped and see whether the code follows.",
            "Check ignition or glow parts, injectors, air leaks and compression in that order of effort.",
        ],
        [EngineRunning, "Ignition parts carry a voltage that can kill: never touch or pull them with the engine running."]);

    public static readonly FirstChecks Flow = new(
        [
            "Look along the whole path for splits, loose clamps, a cap left open, kinks and blockage.",
            "Check that the valves in the path open and close tightly.",
            "Have it tested for leaks with smoke or low pressure where looking does not help.",
        ],
        [HotSystems, "Vapours of fuel catch fire: no flame, no spark, plenty of air."]);

    public static readonly FirstChecks Network = new(
        [
            "Check the battery and charging voltage first: low voltage makes modules fall silent.",
            "See which other modules report or are missing; what they share (fuse, ground, bus line) is the suspect.",
            "Check fuse, ground and connector of the silent module.",
        ],
        [IgnitionOff, "Do not part connectors of airbags or of high-voltage parts to search a network fault."]);

    public static readonly FirstChecks Program = new(
        [
            "Read all modules and note every code, then check the battery voltage.",
            "Find out whether a part or module was replaced, or software changed, shortly before.",
            "Programming and matching needs the maker's data: leave it to a workshop that has them.",
        ],
        ["Never let the battery run low, and never disconnect anything, while a module is being programmed."]);

    public static readonly FirstChecks Learning = new(
        [
            "Find out whether the part, its module or the battery was replaced or disconnected recently.",
            "Repair other codes of the same part first, then repeat the learning by the maker's procedure.",
            "If it will not learn, look for wear or something in the way of its travel.",
        ],
        [MovingParts, "Some learning routines move the vehicle or its parts: follow the maker's conditions to the letter."]);

    public static readonly FirstChecks Timing = new(
        [
            "Check the engine oil: level, age and the right grade; the adjuster works with oil pressure.",
            "Listen for chain noise after a cold start.",
            "Have the timing marks checked before you drive on if the engine rattles or runs rough.",
        ],
        [EngineRunning, "If the timing has jumped, running the engine can destroy it: have it towed."]);

    public static readonly FirstChecks Gearbox = new(
        [
            "Check level, colour and smell of the fluid by the maker's procedure.",
            "Note in which gear, at what temperature and how often it happens.",
            "Read the gearbox codes with a reader that reaches that module before anything is opened.",
        ],
        ["Stop if drive is lost or the gears bang: secure the vehicle with the parking brake and chocks before you go near it.", EngineRunning]);

    public static readonly FirstChecks Insulation = new(
        [
            "Stop using and charging the vehicle and note the exact wording of any warning.",
            "Look, without touching, for water, damaged orange cables and damage after a crash.",
            "Hand it to a workshop qualified for high-voltage vehicles.",
        ],
        ["High voltage can kill without warning: do not open, part or touch orange cables and the parts they lead to."]);

    public static readonly FirstChecks Message = new(
        [
            "This code only passes a message on: read the module that it names for the real code.",
            "Repair that code first, then clear both.",
        ],
        ["Heed the warning that the other module raised; it may be about brakes, steering or high voltage."]);

    public static readonly FirstChecks Wear = new(
        [
            "Look the part over, and check its age, distance and service record.",
            "Find out what wears it out early before you replace it, or the new one fails the same way.",
        ],
        [HotSystems]);

    public static readonly FirstChecks General = new(
        [
            "Read all modules and note every code with its status before you clear anything.",
            "Look at the part, its connector and its fuse.",
            "Look the code up in the maker's repair information, which knows the conditions on your vehicle.",
        ],
        [IgnitionOff]);

    public static readonly FirstChecks AskTheMaker = new(
        ["Only the maker's own list says what this code means on your vehicle; ask a workshop that has it."],
        ["Do not replace parts by the wording of a code that the standard does not define."]);
}
