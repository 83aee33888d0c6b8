using System.Globalization;
using Alumroot.Studio;
using Alumroot.Studio.Documents;
using Alumroot.Studio.Exchange;
using Alumroot.Studio.Integrity;
using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;
using Alumroot.Studio.Store;

namespace Alumroot.App.Words;

/// <summary>Sentences about the record: what was kept, what could not be, what a check found.</summary>
public static class StudioWords
{
    /// <summary>Why the record could not be read or written.</summary>
    public static string Of(StudioFailure failure, string folder)
    {
        ArgumentNullException.ThrowIfNull(failure);
        return failure.Kind switch
        {
            TroubleKind.Missing => $"There is no studio in '{folder}'. Name its folder with --studio, or begin one with 'alumroot record new'.",
            TroubleKind.Unwritable => $"The studio in '{folder}' cannot be written, so nothing was added; what was kept before is there. Change who may write there, or choose another folder with --studio ({failure.Detail}).",
            TroubleKind.Full => $"The disk of '{folder}' is full, so nothing was added; what was kept before is there. Make room and try again.",
            TroubleKind.Locked => $"Another program has the studio in '{folder}' open, so nothing was added. Record there, or close it and try again.",
            TroubleKind.Newer => $"A newer version of alumroot wrote the studio in '{folder}' ({failure.Detail}). Use that version; nothing was changed.",
            _ => $"The record in '{folder}' is damaged: {failure.Detail}. Keep the folder as it is, and put the newest copy from its folder '{StudioStore.BackupsName}' in a new one.",
        };
    }

    /// <summary>Why an entry was not added; null when it was, or was there.</summary>
    public static string? WhyNot(AppendResult result) => result switch
    {
        AppendResult.NumberTaken taken => $"The number '{taken.Existing.Id}' belongs to another entry about {taken.Existing.Subject}, which stays as it is. Leave --entry out, or give a new number.",
        AppendResult.NothingToCorrect missing => $"There is no entry '{missing.Corrects}' about this subject to correct. 'alumroot show' lists its entries with their numbers.",
        AppendResult.MovedOn moved => $"{moved.Latest.Subject} moved on meanwhile: {EntryWords.Of(moved.Latest)} was kept {moved.Latest.At.ToString("HH:mm:ss", CultureInfo.InvariantCulture)}, from another device perhaps. Nothing was added; look, then enter it again if it is still missing.",
        AppendResult.PhotoMissing photo => $"The photograph {photo.Hash[..Math.Min(12, photo.Hash.Length)]} is not in the studio. Record it again from its file.",
        _ => null,
    };

    /// <summary>"Kept 26-014 14:02:31 alkali added 3.0 g."</summary>
    public static string Kept(Entry entry, bool wasThere)
    {
        ArgumentNullException.ThrowIfNull(entry);
        string what = EntryWords.Of(entry);
        return string.Create(CultureInfo.InvariantCulture, $"{(wasThere ? "Kept before" : "Kept")} {entry.Subject} {entry.At:HH:mm:ss} {what}");
    }

    /// <summary>What is left of a lot in grams or millilitres; null when it is not known.</summary>
    public static string? Left(LotState lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        if (lot.LeftSi is not { } left) return null;
        (double factor, string unit) = lot.Bought!.Amount.SiUnit == Measured.CubicMetre ? (1e6, "mL") : (1000, "g");
        return string.Create(CultureInfo.InvariantCulture, $"{left * factor:0.###} {unit}");
    }

    /// <summary>What has to be said about the stock of a lot, or null.</summary>
    public static string? Stock(SubjectKey key, LotState? lot)
    {
        if (lot is null) return $"{key} is not on the shelf, so its stock is not known. Record it with 'alumroot record lot'.";
        if (lot.BelowNothing) return $"More of {key} was used than came: {Left(lot)} left. Look for a wrong weight or lot number.";
        return lot.UsesInOtherUnit > 0 ? $"{lot.UsesInOtherUnit} uses of {key} are in a unit that cannot be taken from its amount, and are not counted." : null;
    }

    /// <summary>What the check found, how bad it is and what to do.</summary>
    public static string Of(StudioFinding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Key switch
        {
            FindingKeys.DatabaseDamaged => $"The file of the record is damaged ({finding.Detail}). Keep the folder as it is, and open the newest copy in a new folder.",
            FindingKeys.EntryUnreadable => $"Entry {finding.Where} cannot be read any more. Look for it in the newest copy or export.",
            FindingKeys.EntryChanged => $"Entry {finding.Where} is not what was written. Look for it in the newest copy or export.",
            FindingKeys.ChainBroken => $"At entry {finding.Where} the order of the record is broken: entries were taken out or changed. Compare with the newest copy.",
            FindingKeys.DocumentUnreadable => $"Entry {finding.Where} is kept, but its content does not follow its form ({finding.Detail}). It does not count until it is corrected.",
            FindingKeys.DocumentUnknown => $"Entry {finding.Where} is a '{finding.Detail}', which this version does not know. It is kept as it is for a newer one.",
            FindingKeys.CorrectionLost => $"Entry {finding.Where} corrects {finding.Detail}, which is not there. Both may count; import the other part of the record.",
            FindingKeys.PhotoMissing => $"The photograph {finding.Where} is missing. Put it back from a copy.",
            FindingKeys.PhotoChanged => $"The photograph {finding.Where} is not what was kept. Put it back from a copy.",
            FindingKeys.PhotoUnnamed => $"No entry names the photograph {finding.Where}. Nothing is wrong: its entry may not have been sent.",
            FindingKeys.ListDiffers => $"The list shows {finding.Where} otherwise than its entries say. The entries are right; export them and import them into a new folder.",
            FindingKeys.SearchDiffers => "The search does not know every entry. The entries are right; export them and import them into a new folder.",
            FindingKeys.TwoPlans => $"{finding.Detail} plans stand under {finding.Where}: two studios used the same number. Both are kept; undo one if it is not yours.",
            FindingKeys.StockBelowNothing => $"More of {finding.Where} was used than came ({finding.Detail} left). Look for a wrong weight or lot number.",
            FindingKeys.KeptAside => $"{finding.Detail} imported entries are kept aside, since their numbers belong to others here. Nothing of yours was changed; the page /kept/aside shows both.",
            _ => $"{finding.Key}: {finding.Where} {finding.Detail}",
        };
    }

    /// <summary>Why a photograph was not taken, and what to do.</summary>
    /// <param name="why">Why not.</param>
    /// <param name="what">Which, at the beginning of a sentence.</param>
    public static string Of(PhotoRefusal why, string what) => why switch
    {
        PhotoRefusal.NotAPicture => $"{what} is not a JPEG, PNG or WebP picture. Let the camera save JPEG, or save the picture as one.",
        PhotoRefusal.TooManyBytes => $"{what} is larger than {PhotoFolder.MostBytes >> 20} MiB. Save it smaller, or take it with fewer megapixels.",
        PhotoRefusal.TooManyPixels => $"{what} has more than {PhotoFolder.MostPixels / 1_000_000} megapixels. Save it smaller, or take it with fewer.",
        PhotoRefusal.Moving => $"{what} is a moving picture. Take or save a still one.",
        _ => $"{what} begins like a picture but cannot be read to its end. Send or copy it again.",
    };

    /// <summary>Why a file was not imported.</summary>
    public static string Of(ImportOutcome.Refused refused, string file)
    {
        ArgumentNullException.ThrowIfNull(refused);
        string why = refused.Why switch
        {
            ImportRefusal.CannotRead => "could not be read. Check the name and whether you may read it",
            ImportRefusal.NotAZip => "is not a zip, or it is damaged. Fetch it again",
            ImportRefusal.NotAStudio => "is not an exported studio. 'alumroot export' makes one",
            ImportRefusal.Newer => "was written by a newer version of alumroot. Use that version",
            ImportRefusal.StrangeName => $"holds '{refused.Where}', which no export has. Do not trust it; ask for a new export",
            ImportRefusal.TooLarge => "unpacks to more than a studio can hold. Do not trust it; ask for a new export",
            _ => $"is damaged at {refused.Where}. Fetch it again, or export anew",
        };
        return $"'{file}' {why}. Nothing was changed.";
    }
}
