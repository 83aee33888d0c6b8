using System.CommandLine;

namespace Alumroot.App.Verbs.Record;

/// <summary>The words and options of <c>record</c>.</summary>
internal sealed class RecordOptions
{
    public Argument<string[]> Words { get; } = new("words")
    {
        HelpName = "WORDS",
        Arity = ArgumentArity.OneOrMore,
        Description = "'26-014 added \"3.0 g\"', '26-014 STEP [AMOUNT]' with STEP one of extract, salt, alkali, settle, wash, filter, dry, grind, sieve, '26-014 note', '26-014 given-up REASON', '26-014 undo ENTRY', 'plan ADDRESS', 'new --from FILE', 'lot KIND NAME AMOUNT', 'trial ADDRESS NAME', 'T-05 jar 3 yield=2.4', 'T-05 ended'",
    };

    public Option<string?> Strip { get; } = new("--strip") { HelpName = "PH", Description = "pH read from a strip" };

    public Option<string?> Meter { get; } = new("--meter") { HelpName = "PH", Description = "pH read from a meter" };

    public Option<string?> Conductivity { get; } = new("--conductivity") { HelpName = "VALUE", Description = "conductivity, such as 200uS" };

    public Option<string?> Temperature { get; } = new("--temp") { HelpName = "TEMP", Description = "temperature, such as 60C" };

    public Option<string?> PhStep { get; } = new("--ph-step") { HelpName = "PH", Description = "the smallest step of that strip or meter, such as 0.5" };

    public Option<string?> Scale { get; } = new("--scale") { HelpName = "MASS", Description = "the smallest step of the scale, such as 0.1g" };

    public Option<string[]> Use { get; } = new("--use") { HelpName = "LOT", Description = "the lot it was taken from, such as lot-7; of several lots each with its amount: --use \"lot-7 20 g\"" };

    public Option<string?> Note { get; } = new("--note") { HelpName = "TEXT", Description = "free words" };

    public Option<string[]> Photo { get; } = new("--photo") { HelpName = "FILE", Description = "a photograph: JPEG, PNG or WebP; may stand more than once" };

    public Option<string?> Corrects { get; } = new("--corrects") { HelpName = "ENTRY", Description = "the entry this one takes the place of; that one is kept" };

    public Option<string?> Entry { get; } = new("--entry") { HelpName = "ID", Description = "the entry's own number; the same again is the same entry" };

    public Option<string?> From { get; } = new("--from") { HelpName = "FILE", Description = "for new: the plan's fields as JSON, - for standard input" };

    public Option<string?> Cost { get; } = new("--cost") { HelpName = "TEXT", Description = "for a lot: what it cost" };

    public Option<string?> Source { get; } = new("--source") { HelpName = "TEXT", Description = "for a lot: where it came from" };

    public Option<string?> Studio { get; } = StudioVerb.FolderOption();

    public Option<bool> Json { get; } = StudioVerb.JsonOption();

    public IReadOnlyList<Option> All => [Strip, Meter, PhStep, Conductivity, Temperature, Scale, Use, Note, Photo, Corrects, Entry, From, Cost, Source, Studio, Json];
}
