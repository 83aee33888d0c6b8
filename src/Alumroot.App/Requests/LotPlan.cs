using Alumroot.Studio.Documents;
using Alumroot.Studio.Journal;

namespace Alumroot.App.Requests;

/// <summary>The fields of a plan that a lot on the shelf fills.</summary>
public static class LotPlan
{
    /// <summary>A plan begun with this lot; null for what no plan asks for.</summary>
    public static string? Address(SubjectKey key, LotBought lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return Filled(PlanRequest.Empty, key, lot) is { IsEmpty: false } request ? request.Address : null;
    }

    /// <summary>A request with the fields of a lot filled in.</summary>
    public static PlanRequest Filled(PlanRequest request, SubjectKey key, LotBought lot)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(lot);
        return lot.Substance switch
        {
            LotClass.Dyestuff => request.With(PlanFields.Dyestuff, lot.PlanName ?? lot.Title).With(PlanFields.DyestuffLot, key.ToString()),
            LotClass.Salt => request.With(PlanFields.Salt, lot.PlanName ?? lot.Title).With(PlanFields.SaltLot, key.ToString()),
            LotClass.Alkali when lot is { BakedFrom: { } from, BakedTo: { } to } => request.With(PlanFields.Alkali, "home-baked").With(PlanFields.BakedBefore, from.Typed).With(PlanFields.BakedAfter, to.Typed).With(PlanFields.AlkaliLot, key.ToString()),
            LotClass.Alkali => request.With(PlanFields.Alkali, lot.PlanName ?? lot.Title).With(PlanFields.AlkaliLot, key.ToString()),
            _ => request,
        };
    }
}
