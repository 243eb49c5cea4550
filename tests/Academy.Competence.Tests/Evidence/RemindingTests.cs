using Academy.Competence.Evidence;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

public class RemindingTests
{
    private static readonly ModuleName HeatStroke = new("heat-stroke");
    private static readonly ModuleName Blades = new("blades");
    private static readonly ModuleAsked Asked = new(
        Blades,
        1,
        SafetyCriticalSince: 1,
        RefresherDays: 90,
        RenewedEachSpring: false
    );

    [Fact]
    public void A_pass_reminds_of_its_refresher_on_the_last_day_on_which_it_counts()
    {
        var passed = Quiz(Blades, "2026-05-01T09:00Z");

        Assert.Equal([new Reminder(Blades, ReminderKind.Refresher, Day("2026-05-28"), passed.HandedInAt)], Of([Asked], passed));
    }

    [Fact]
    public void What_was_never_passed_reminds_of_nothing_and_neither_does_a_pass_for_good()
    {
        Assert.Empty(Of([Asked]));
        Assert.Empty(Of([Asked with { RefresherDays = null }], Quiz(Blades, "2026-05-01T09:00Z")));
    }

    // The salon's own rule: renewed from March on and by May; a pass in the autumn counts until the end of April.
    [Fact]
    public void A_module_of_the_season_reminds_of_its_renewal_where_that_comes_first()
    {
        var asked = new ModuleAsked(HeatStroke, 1, 1, RefresherDays: null, RenewedEachSpring: true);
        var last = new DateOnly(2026, House.RenewByMonth, 1).AddDays(-1);

        var reminder = Assert.Single(Of([asked], Quiz(HeatStroke, "2025-10-01T09:00Z")));

        Assert.Equal((ReminderKind.Renewal, last), (reminder.Kind, reminder.LastDay));
    }

    [Fact]
    public void A_safety_change_reminds_of_catching_up_by_its_day()
    {
        var changed = Asked.Then(Asked with { Edition = 2, SafetyCriticalSince = 2 }, catchUpBy: Day("2026-05-10"));

        var reminder = Assert.Single(Of([changed], Quiz(Blades, "2026-05-01T09:00Z")));

        Assert.Equal((ReminderKind.CatchUp, Day("2026-05-10")), (reminder.Kind, reminder.LastDay));
    }

    [Fact]
    public void The_earliest_stands_first_and_a_day_that_is_past_stays()
    {
        var later = Asked with { Module = HeatStroke };

        Assert.Equal(
            [(Blades, Day("2026-01-28")), (HeatStroke, Day("2026-05-28"))],
            Of([later, Asked], Quiz(HeatStroke, "2026-05-01T09:00Z"), Quiz(Blades, "2026-01-01T09:00Z"))
                .Select(reminder => (reminder.Module, reminder.LastDay))
        );
    }

    private static Listed<Reminder> Of(Listed<ModuleAsked> library, params QuizTaken[] taken) =>
        Reminding.Of(library, taken, Day("2026-05-02"), TimeZoneInfo.Utc, House);

    private static QuizTaken Quiz(ModuleName module, string at) =>
        new(module, 1, DateTimeOffset.Parse(at, System.Globalization.CultureInfo.InvariantCulture), HasPassed: true, false);
}
