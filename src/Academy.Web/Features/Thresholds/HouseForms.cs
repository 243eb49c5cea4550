using System.Globalization;
using Academy.Competence.Salons;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc.Rendering;

namespace Academy.Web.Features.Thresholds;

/// <summary>The house rules as a form shows them.</summary>
internal static class HouseForms
{
    public static IReadOnlyList<SelectListItem> Months { get; } =
    [
        .. Enumerable
            .Range(1, 12)
            .Select(month => new SelectListItem(
                SalonTime.Culture.DateTimeFormat.GetMonthName(month),
                month.ToString(CultureInfo.InvariantCulture)
            )),
    ];

    public static IReadOnlyList<Pick> Incidents { get; } = Say.Picks<IncidentKind>(Say.Word);

    public static HouseForm Of(SalonBook book)
    {
        var house = book.House;
        return new HouseForm
        {
            Name = book.Name,
            VetName = book.VetName,
            VetPhone = book.VetPhone,
            Hot = Degrees(house.HotFromTenthsC),
            HotAtRisk = Degrees(house.HotForAtRiskFromTenthsC),
            Stop = Degrees(house.StopFromTenthsC),
            StopAtRisk = Degrees(house.StopForAtRiskFromTenthsC),
            HotIndexF = house.HotFromIndexF,
            ReadingHours = house.ReadingGoodForHours,
            HotFromMonth = house.HotSeasonFromMonth,
            HotToMonth = house.HotSeasonToMonth,
            RenewFromMonth = house.RenewFromMonth,
            RenewByMonth = house.RenewByMonth,
            ElderlyYears = house.ElderlyFromYears,
            YoungWeeks = house.VeryYoungUntilWeeks,
            LiftKg = house.LiftAloneUpToKg,
            ModulesDays = house.ModulesDueInDays,
            Under18WithSenior = house.Under18OnlyWithSeniorIn,
            Critical = [.. house.CriticalKinds.Select(kind => kind.ToString())],
        };
    }

    private static string Degrees(int tenths) => (tenths / 10m).ToString("0.0", CultureInfo.InvariantCulture);
}
