using System.Collections.Immutable;
using static GuideGen.Guide.Findings.Severity;

namespace GuideGen.Guide.Findings;

/// <summary>The rule book: every wording in one place. A new rule is a row here and the inspection that yields it.</summary>
public static class Rules
{
    // Files
    public static readonly Rule FileMissing = new("file-missing", Error, "A file that every guide needs is not there",
        "'{0}' is missing.", "Every guide has a site-config.yml and a content/vehicle.yml: add the file.");

    public static readonly Rule FileUnknown = new("file-unknown", Warning, "A file that belongs to no kind of content",
        "'{0}' is not part of the guide.", "Pages lie in faults, checks, symptoms, parts, tasks or codes and end in .md; trees and cases end in .yml; pictures lie in images. Move or rename it.");

    public static readonly Rule FileUnreadable = new("file-unreadable", Error, "A file that cannot be read",
        "The file cannot be read: {0}.", "Check its permissions, and that nothing else is writing it.");

    public static readonly Rule FileChanged = new("file-changed", Error, "A file that was changed while the site was being made",
        "The file is not the one that was inspected.", "Wait until nothing writes it any more, and compile again.");

    public static readonly Rule FileLinked = new("file-linked", Warning, "A link that is not followed",
        "This is a link to another place, and a guide is only what lies in its own folders.", "Put the file or the folder itself here, or take the link away.");

    public static readonly Rule FileTooLarge = new("file-too-large", Error, "A file that is too large",
        "The file has {0}; at most {1} are read.", "Split it: one fault, one page.");

    public static readonly Rule FileEmpty = new("file-empty", Error, "A file without content",
        "The file is empty.", "Write the page, or remove the file.");

    public static readonly Rule TextEncoding = new("text-encoding", Error, "Text that is not UTF-8",
        "The file is not valid UTF-8 from here on.", "Save it again as UTF-8 in your editor.");

    public static readonly Rule TextControl = new("text-control", Error, "A control character in text",
        "The control character {0} stands here.", "Delete it; most editors can show invisible characters.");

    public static readonly Rule TextNesting = new("text-nesting", Error, "Markdown that is nested too deeply",
        "Lists, quotes or brackets are nested too deeply in this page to be read.", "Write it flatter.");

    public static readonly Rule TextMarks = new("text-marks", Error, "More marks than Markdown can be read with in good time",
        "There are more than {0}; the page is not read beyond this place.", "Take out stray signs, or part a long table, paragraph or page in two.");

    public static readonly Rule SlugForm = new("slug-form", Error, "A file name that cannot be an address",
        "'{0}' cannot be part of an address.", "Use lower-case letters a to z, digits and single hyphens, such as charge-air-hose-split, and no name that some systems reserve.");

    public static readonly Rule SlugCode = new("slug-code", Error, "A code page whose file name is not a code",
        "'{0}' is not a trouble code in capital letters.", "Name the file after its code, such as P1A42.md.");

    public static readonly Rule SlugDuplicate = new("slug-duplicate", Error, "Two files with the same slug",
        "The slug '{0}' is taken by {1}.", "Rename one of the two files.");

    // Front matter and structured text
    public static readonly Rule FrontMatterMissing = new("front-matter-missing", Error, "A page without front matter",
        "The page does not begin with front matter.", "Begin with a line of three hyphens, the keys, and another line of three hyphens.");

    public static readonly Rule FrontMatterUnclosed = new("front-matter-unclosed", Error, "Front matter that does not end",
        "The front matter that begins here never ends.", "Close it with a line of three hyphens.");

    public static readonly Rule FrontMatterEmpty = new("front-matter-empty", Error, "Front matter without keys",
        "The front matter has no keys.", "A page needs at least a name and a summary.");

    public static readonly Rule YamlSyntax = new("yaml-syntax", Error, "Structured text that cannot be read",
        "This cannot be read: {0}.", "Look at indents, colons and quotes here and on the line before; put text with a colon in quotes.");

    public static readonly Rule YamlRefused = new("yaml-refused", Error, "Structured text with what a guide does not use",
        "Here stands {0}, which is not read.", "Write the value out in full.");

    public static readonly Rule KeyUnknown = new("key-unknown", Error, "A key that is not known",
        "The key '{0}' is not known here.", "Remove or correct it.{1}");

    public static readonly Rule KeyMissing = new("key-missing", Error, "A key that is missing",
        "The key '{0}' is missing.", "Add '{0}:' with {1}.");

    public static readonly Rule KeyDuplicate = new("key-duplicate", Error, "A key that stands twice",
        "The key '{0}' stands twice; only the first one counts.", "Remove one of the two, or join them.");

    public static readonly Rule ValueType = new("value-type", Error, "A value of the wrong shape",
        "Expected {0}, found {1}.", "Write {0} here.");

    public static readonly Rule ValueWord = new("value-word", Error, "A word that is not one of the allowed ones",
        "'{0}' is not {1}.", "Choose one of the words.{2}");

    public static readonly Rule ValueEmpty = new("value-empty", Error, "A key without a value",
        "The key '{0}' has no value.", "Write {1}, or remove the key if it is not needed.");

    public static readonly Rule UnitUnknown = new("unit-unknown", Error, "A unit that does not belong to the quantity",
        "'{0}' is not a unit of {1} that the tool knows.", "Use one of {2}.");

    public static readonly Rule ReadingLimits = new("reading-limits", Error, "A reading whose limits do not hold together",
        "The reading '{0}' {1}.", "Give low and high, or a table over another quantity; a pressure also says its scale.");

    public static readonly Rule KeyContext = new("key-context", Error, "A key that does not belong here",
        "The key '{0}' only belongs to {1}.", "Remove it, or correct the other key.");

    public static readonly Rule BlankLeft = new("blank-left", Error, "A blank that is still to be filled",
        "Here is a blank.", "Write what the comment or the words beside it ask for, and take the underscores out.");

    // Names of other things
    public static readonly Rule NameUnknown = new("name-unknown", Error, "A name that nothing has",
        "There is no {0} '{1}'.", "Correct the name, or add the {0}.{2}");

    public static readonly Rule OutcomeUnknown = new("outcome-unknown", Error, "An outcome that the check does not have",
        "The check '{0}' has no outcome '{1}'.", "Use one of its outcomes.{2}");

    // Codes
    public static readonly Rule CodeStructure = new("code-structure", Error, "Not a possible trouble code",
        "'{0}' is not a possible code: {1}.", "A code is P, C, B or U, a digit 0 to 3 and three of 0-9 and A-F, in capital letters (SAE J2012).{2}")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule CodeReserved = new("code-reserved", Warning, "A code of a range the standard keeps back",
        "{0} lies in a range that SAE J2012 keeps back (B3 and C3).", "Check the reading. If this vehicle really sets it, say so in content/codes/{0}.md.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule CodeUnassigned = new("code-unassigned", Warning, "A code of the standard without a known meaning",
        "{0} belongs to SAE J2012, and no meaning of it is known.", "Check the digits. If this vehicle really sets it, say what it means in content/codes/{0}.md.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule CodeMakerUnexplained = new("code-maker-unexplained", Error, "A maker's own code without an explanation",
        "{0} is the maker's own code, and nothing here says what it means.", "Add content/codes/{0}.md with its meaning on this vehicle.");

    public static readonly Rule CodeMeaning = new("code-meaning", Warning, "A meaning that the standard contradicts",
        "The meaning given for {0} says '{1}'; the standard says '{2}'.", "Check the code and the meaning against each other. If this vehicle really means something else by it, dismiss this with a reason.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule CodeLoose = new("code-loose", Warning, "A loosely written code in text",
        "'{0}' looks like a code that is not written as one.", "Write {1}, so that it is found and links itself, or dismiss this with a reason.")
    {
        CanBeDismissed = true,
    };

    // Sections
    public static readonly Rule SectionMissing = new("section-missing", Error, "A section that every such page has",
        "The section '{0}' is missing.", "{3} A {1} page has: {2}.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule SectionEmpty = new("section-empty", Error, "A section without text",
        "The section '{0}' is empty.", "Write it, or say plainly why there is nothing to do.");

    public static readonly Rule SectionOrder = new("section-order", Warning, "Sections in an unusual order",
        "The section '{0}' stands after '{1}'.", "Owners find their way by the usual order: {2}.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule HeadingLevel = new("heading-level", Error, "A heading of the first level in a page",
        "The heading '{0}' is of the first level, which is the page's name.", "Begin with ##.");

    // Safety
    public static readonly Rule SafetyMissing = new("safety-missing", Error, "A hands-on page without a Safety section",
        "The section '{0}' is missing.", "{1} Say there what can hurt someone in this job, and how to avoid it.");

    public static readonly Rule SafetyEmpty = new("safety-empty", Error, "A Safety section without text",
        "The section '{0}' is empty.", "Say what can hurt someone in this job, and how to avoid it.");

    public static readonly Rule SafetyLate = new("safety-late", Error, "A Safety section after hands-on work",
        "The section '{0}' stands after '{1}'.", "Move it up: a caution counts before the step, not after it.");

    public static readonly Rule HazardUnknown = new("hazard-unknown", Error, "A hazard that nobody knows",
        "There is no hazard '{0}'.", "Use one of the built-in hazards or add it to content/hazards.yml.{1}");

    public static readonly Rule HazardUnmet = new("hazard-unmet", Warning, "A declared hazard that the Safety section does not name",
        "The hazard '{0}' is declared, but the Safety section does not name it.", "Say how to avoid it in this job; the section has to use one of: {1}.")
    {
        CanBeDismissed = true,
        IsAboutSafety = true,
        IsErrorIfGrave = true,
    };

    public static readonly Rule HazardUndeclared = new("hazard-undeclared", Warning, "Hands-on text that calls for a hazard",
        "'{0}' in hands-on text calls for the hazard '{1}'.", "Add {1} to hazards and say in the Safety section how to avoid it, with one of: {2}. If the word means something else here, dismiss this with a reason.")
    {
        CanBeDismissed = true,
        IsAboutSafety = true,
        IsErrorIfGrave = true,
    };

    public static readonly Rule HazardBuiltIn = new("hazard-built-in", Error, "An own hazard with a built-in name",
        "The hazard '{0}' is built in.", "Give your own hazard another name.");

    // Links and pictures
    public static readonly Rule LinkBroken = new("link-broken", Error, "A link that leads nowhere",
        "The link '{0}' leads nowhere: {1}.", "Link to the content file, such as ../checks/name.md.{2}");

    public static readonly Rule LinkScheme = new("link-scheme", Error, "A link of a kind that is not allowed",
        "The link '{0}' is of a kind that is not allowed.", "Links are relative, or begin with https:, http: or mailto:.");

    public static readonly Rule LinkOutside = new("link-outside", Note, "A link that leaves the guide",
        "The link leaves the guide: {0}.", "It is listed here and never fetched; it needs a signal to work.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule AnchorMissing = new("anchor-missing", Error, "A link to a heading that is not there",
        "'{0}' has no heading '#{1}'.", "Use the anchor of one of its headings.{2}");

    public static readonly Rule ImageMissing = new("image-missing", Error, "A picture that is not there",
        "The picture '{0}' is not there.", "Pictures lie in content/images; check the path and the spelling.{1}");

    public static readonly Rule ImageAlt = new("image-alt", Error, "A picture without a text alternative",
        "The picture '{0}' has no text alternative.", "Say between the square brackets what the picture shows.");

    public static readonly Rule ImageKind = new("image-kind", Error, "A picture of a kind that is not used",
        "A file that ends in '{0}' is not a picture that a guide uses.", "Use SVG for drawings, and JPEG, PNG or WebP for photos.");

    public static readonly Rule ImageClash = new("image-clash", Error, "Two picture files that some systems take for one",
        "'{0}' and '{1}' are one file to some systems.", "Rename one of the two: capital and small letters, and ways to write a letter with its mark, are not told apart everywhere.");

    public static readonly Rule ImageUnreadable = new("image-unreadable", Error, "A picture that cannot be read",
        "This is not the picture that its name promises.", "Open it in an image editor and save it anew.");

    public static readonly Rule ImageBroken = new("image-broken", Error, "A photo that is broken behind its beginning",
        "The photo begins well, but the rest of it cannot be read.", "Copy it again from where it came, or open it in an image editor and save it anew.");

    public static readonly Rule ImageLarge = new("image-large", Error, "A picture that is too large",
        "The picture has {0}; at most {1} are read.", "Make it smaller: a page shows at most 1600 pixels across.");

    public static readonly Rule ImageUnsafe = new("image-unsafe", Error, "A drawing with something that acts or loads",
        "The drawing contains {0}, which acts by itself or loads something.", "Take it out, or save the drawing as plain SVG.");

    public static readonly Rule ImagePosition = new("image-position", Warning, "A photo that tells where it was taken",
        "The photo carries the position where it was taken.", "The site leaves it out, but whoever sees these files can read it: save the photo without it.");

    public static readonly Rule HtmlRefused = new("html-refused", Error, "HTML that this guide does not allow",
        "Here stands {0}, which this guide does not allow.", "Write it as Markdown. {1}");

    public static readonly Rule FormerForm = new("former-form", Error, "An old address that cannot be one",
        "'{0}' cannot be an old address of a page.", "Write it from the site's root, such as faults/old-name.html.");

    public static readonly Rule FormerTaken = new("former-taken", Error, "An old address that leads elsewhere",
        "'{0}' is taken by {1}.", "An old address can lead to one page only: remove one of the two.");

    // Trees
    public static readonly Rule TreeStepKind = new("tree-step-kind", Error, "A step that is not of one kind",
        "A step needs exactly one of {1}; here is {0}.", "Say what the step is.");

    public static readonly Rule TreeDangling = new("tree-dangling", Error, "A way that leads to no step",
        "'{0}' leads to '{1}', which is no step of this tree.", "Correct the name, or add the step.{2}");

    public static readonly Rule TreeUnreachable = new("tree-unreachable", Error, "A step that nothing leads to",
        "Nothing leads to the step '{0}'.", "Lead an answer there, or remove it.");

    public static readonly Rule TreeCircular = new("tree-circular", Error, "A walk that never ends",
        "The walk goes round in a circle: {0}.", "Lead one of these answers on to something new.");

    public static readonly Rule TreeOutcomeUncovered = new("tree-outcome-uncovered", Error, "An outcome that no way covers",
        "The step '{0}' has no way on for the outcome '{1}' of the check '{2}'.", "Add '{1}:' with the step it leads to.");

    public static readonly Rule TreeJoinCircular = new("tree-join-circular", Error, "Trees that lead to each other",
        "The trees lead to each other in a circle: {0}.", "End one of them in a fault or advice.");

    public static readonly Rule TreeDeep = new("tree-deep", Error, "A walk that takes too long",
        "The walk to '{0}' takes {1} steps; at most {2} are allowed.", "Ask what parts the causes best first, or join another tree.");

    public static readonly Rule TreeFaultMissed = new("tree-fault-missed", Warning, "A fault that a tree of its symptom does not find",
        "The tree never comes to the fault '{0}', which shows the symptom '{1}' more than rarely.", "{2} Or dismiss this with a reason, here or on {3}. It is a warning: a new page need not wait for its tree.")
    {
        CanBeDismissed = true,
        IsAcrossPages = true,
    };

    public static readonly Rule TreeAnswerSingle = new("tree-answer-single", Warning, "A question with a single answer",
        "The question '{0}' has a single answer, so it decides nothing (walk: {1}).", "Add the other answers, or lead straight on to the next step.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule TreeAnswerRepeated = new("tree-answer-repeated", Error, "Two answers with the same words",
        "The step '{0}' has the answer '{1}' twice (walk: {2}).", "Say in the answers what tells them apart.");

    public static readonly Rule TreeCannotTell = new("tree-cannot-tell", Warning, "A step without a way on for somebody who cannot tell",
        "The step '{0}' has no 'cannot-tell' (walk: {1}).", "Add 'cannot-tell:' with the step to go on with; a question that everybody can answer says 'certain: true'.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule TreeLeafSymptom = new("tree-leaf-symptom", Warning, "A tree that ends in a fault without its symptom",
        "The tree ends in the fault '{0}', which does not show the symptom '{1}' (walk: {2}).", "Add the symptom to the fault, or lead elsewhere.")
    {
        CanBeDismissed = true,
        IsAcrossPages = true,
    };

    public static readonly Rule TreeDriveOn = new("tree-drive-on", Error, "Advice to drive on with a symptom that says stop",
        "The symptom '{0}' says to stop at once, and the advice '{1}' lets the owner drive without a cause found (walk: {2}).", "Write 'drive: stop-now'; if the walk has made sure that it is harmless, dismiss this with the reason.")
    {
        CanBeDismissed = true,
        IsAcrossPages = true,
    };

    public static readonly Rule TreeCheckRepeated = new("tree-check-repeated", Warning, "A check that is made twice on one walk",
        "The check '{0}' is made twice on the walk {1}.", "Lead the second time straight to what the first one showed.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule TreeGraveFirst = new("tree-grave-first", Warning, "A grave hazard before a cheaper step without one",
        "The hazard '{0}' comes with '{1}', and '{2}', which takes less time and has no such hazard, only after it (walk: {3}).", "Put '{2}' first, or dismiss this with the reason.")
    {
        CanBeDismissed = true,
        IsAcrossPages = true,
    };

    // Signals
    public static readonly Rule SignalSize = new("signal-size", Error, "A signal with too few or too many signs",
        "'{0}' is made of {1} codes and symptoms.", "Name at least two; a table of combinations takes at most {2}.");

    public static readonly Rule SignalTwice = new("signal-twice", Error, "A code or symptom in two signals",
        "'{0}' belongs to '{1}' already.", "A sign goes back to one signal: take it out of one of them.");

    public static readonly Rule SignalTable = new("signal-table", Error, "A table of combinations that is not whole",
        "'{0}' {1}.", "With count: joint give every combination for each fault you list; otherwise leave the table out.");

    // Cases
    public static readonly Rule CaseDate = new("case-date", Error, "A case with an impossible date",
        "The case is dated {0}, {1}.", "Correct the date: it is the day the fault was found.");

    public static readonly Rule CaseDuplicate = new("case-duplicate", Warning, "A case that is told twice",
        "The case '{0}' tells the same: variant, fault, distance and date or signs and work.", "One vehicle, one fault, one case: join the two. If two vehicles really agree so well, dismiss this with a reason.")
    {
        CanBeDismissed = true,
        IsAcrossPages = true,
    };

    public static readonly Rule CasePersonal = new("case-personal", Error, "A case that could lead to a person",
        "'{0}' looks like {1}.", "Leave it out, or write it so that nobody can be recognised. If it is something else, dismiss this with a reason.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule CaseLevelUnreached = new("case-level-unreached", Warning, "A case that proves less than it says",
        "The case says that it is {0}, and what it states makes it {1}.", "For '{0}' it lacks, under proof: {2}. State what was done, or say '{1}'.");

    public static readonly Rule CaseVariant = new("case-variant", Warning, "A case of a variant that its fault does not have",
        "The fault '{0}' does not list the variant '{1}', and here it was found on one.", "Add the variant to the fault, or correct the case.")
    {
        CanBeDismissed = true,
        IsAcrossPages = true,
    };

    public static readonly Rule CaseSignUnlisted = new("case-sign-unlisted", Warning, "A sign that cases of a fault show and its page does not list",
        "The {0} '{1}' stood in {2} cases of this fault, and the page does not list it.", "Add it with how likely it is; if it was something else on the same vehicles, dismiss this with a reason.")
    {
        CanBeDismissed = true,
        IsAcrossPages = true,
    };

    // Upkeep
    public static readonly Rule PageStale = new("page-stale", Note, "A page that nobody has read through for long",
        "The page was last read through on {0}; this guide asks for that every {1} months.", "Read it against what is known today, mend it, and write today's date under 'reviewed'.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule PageSimilar = new("page-similar", Warning, "Two pages that say much the same",
        "{0} % of the phrases of this page stand in {1} as well.", "Say it once, on the page it belongs to or in a task, and link there; or say what differs.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule PartSpelling = new("part-spelling", Warning, "A part whose name is written in two ways",
        "'{0}' is called '{1}' on its own page.", "Write one name for one part, so that search and readers find it; another name that owners use belongs under 'also' of the part.")
    {
        CanBeDismissed = true,
    };

    public static readonly Rule PartCircle = new("part-circle", Error, "Parts that come after each other",
        "'{0}' comes after '{1}', which comes after '{0}'.", "Break the circle at one of them: a closed circuit is written from where a reader begins, such as the pump.");

    // Editions in other languages
    public static readonly Rule TranslationFact = new("translation-fact", Error, "A translation that changes more than words",
        "Only words can differ from '{0}', and this is something else, or not in the same number.", "Leave it out: facts are taken from '{0}'. Lists of steps and answers keep their number and order.");

    public static readonly Rule TranslationAlone = new("translation-alone", Error, "A translation of a page that is not there",
        "There is no '{0}' that this file could translate.", "Rename it after the page it translates, or write that page first.");

    public static readonly Rule TranslationUnlisted = new("translation-unlisted", Warning, "A translation into a language that has no edition",
        "The guide has no edition in '{0}', so this file is not used.", "Add the language to also-in in site-config.yml.");

    public static readonly Rule LanguageTwice = new("language-twice", Error, "A language that is listed twice",
        "The language '{0}' is listed twice.", "Name each language once: the one of the guide under language, the others under also-in.");

    // The guide's own look
    public static readonly Rule ThemeFile = new("theme-file", Warning, "A file in theme/ that is no piece of a theme",
        "'{0}' is no piece of a theme.", "Pieces lie in theme/templates (.html), theme/words (.yml), theme/style (.css, .svg) and theme/script (.js). Move or remove it.");

    public static readonly Rule ThemeTemplate = new("theme-template", Error, "A template that cannot be drawn",
        "This template cannot be drawn: {0}.", "Compare it with the built-in template of the same name, and with the list of what each template is given.");

    public static readonly Rule ThemeAsset = new("theme-asset", Error, "A template that asks for a style or script that is not there",
        "There is no '{0}' in style/ or script/.", "Add the file to theme/style or theme/script, or correct the name.{1}");

    public static readonly Rule WordsUnknown = new("words-unknown", Warning, "A wording that nothing on the site asks for",
        "Nothing asks for the wording '{0}'.", "Remove or correct it.{1}");

    public static readonly Rule WordsPlaces = new("words-places", Error, "A wording with a place that nothing fills",
        "The wording '{0}' has the place {1}, which nothing fills.", "Use the places of the English wording: '{2}'. Two braces stand for one.");

    public static readonly Rule WordsMissing = new("words-missing", Warning, "A language that lacks words of the theme",
        "In '{0}', {1} of {2} wordings are missing, such as {3}; English stands in their place.", "Add them to theme/words/{0}.yml.");

    // Dismissals
    public static readonly Rule DismissalUnused = new("dismissal-unused", Warning, "A dismissal that dismisses nothing",
        "There is no finding of the rule '{0}' here{1} to dismiss.", "Remove the dismissal.");

    public static readonly Rule DismissalRule = new("dismissal-rule", Error, "A dismissal of a rule that nobody knows",
        "There is no rule '{0}'.", "Use the name that the finding shows.{1}");

    public static readonly Rule DismissalFirm = new("dismissal-firm", Error, "A dismissal of what cannot be dismissed",
        "Findings of the rule '{0}' cannot be dismissed.", "Mend what it finds. These can be dismissed: {1}.");

    public static readonly Rule DismissalReason = new("dismissal-reason", Error, "A dismissal without a real reason",
        "The reason '{0}' does not say why.", "Say in at least three words why the finding does not hold here.");

    public static readonly Rule WeightFirm = new("weight-firm", Error, "A rule that cannot weigh so little",
        "Findings of the rule '{0}' cannot weigh less than {1}.", "Let them weigh {1} or more, or remove the row. A finding about safety is never less than a warning.");

    public static readonly Rule WeightIdle = new("weight-idle", Warning, "A weight for files that are not there",
        "No file of the guide is like '{0}'.", "Correct it, such as content/parts/*, or remove the row.");

    /// <summary>Every rule, in the order of the ids.</summary>
    public static ImmutableArray<Rule> All { get; } =
    [
        .. typeof(Rules).GetFields()
            .Where(f => f.FieldType == typeof(Rule))
            .Select(f => (Rule)f.GetValue(null)!)
            .OrderBy(r => r.Id, StringComparer.Ordinal),
    ];
}
