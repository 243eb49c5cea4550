using Academy.Competence.Evidence;
using Academy.Competence.Salons;
using static Academy.Competence.Evidence.ModuleState;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

// The 14 days are the salon's own rule, no published source; March and May are the house rules' defaults (product.md, "renewed
// each spring").
public class StudyingTests
{
    private static readonly ModuleName HeatStroke = new("heat-stroke");
    private static readonly ModuleAsked EachSpring = new(HeatStroke, 3, SafetyCriticalSince: 2, RefresherDays: 90, true);
    private static readonly ModuleAsked AllYear = EachSpring with { RenewedEachSpring = false };

    // state                                  pressing
    [Theory]
    [InlineData(ModuleState.NotPassed, StudyNeed.ToStudy)]
    [InlineData(EditionTooOld, StudyNeed.Overdue)]
    [InlineData(RefresherOverdue, StudyNeed.Overdue)]
    [InlineData(RefresherFailed, StudyNeed.Overdue)]
    [InlineData(NotRenewed, StudyNeed.Overdue)]
    [InlineData(NotInLibrary, null)] // nobody can study what is not there
    public void What_no_longer_counts_presses_most(ModuleState state, StudyNeed? need) =>
        Assert.Equal(need, Studying.NeedOf(new(HeatStroke, state, null, null), Day("2026-06-10")));

    // last day that counts   need on 10 June
    [Theory]
    [InlineData("2026-06-10", StudyNeed.DueSoon)] // today is the last day
    [InlineData("2026-06-24", StudyNeed.DueSoon)] // 14 days
    [InlineData("2026-06-25", StudyNeed.Passed)] // 15 days
    [InlineData(null, StudyNeed.Passed)] // never runs out
    public void A_pass_is_due_in_its_last_fourteen_days(string? last, StudyNeed need) =>
        Assert.Equal(
            need,
            Studying.NeedOf(new(HeatStroke, Current, Day("2026-05-01"), last is null ? null : Day(last)), Day("2026-06-10"))
        );

    [Fact]
    public void A_refresher_that_was_once_not_passed_presses_however_far_off_its_day_is() =>
        Assert.Equal(
            StudyNeed.DueSoon,
            Studying.NeedOf(new(HeatStroke, Current, Day("2026-05-01"), Day("2026-12-01"), IsLastTry: true), Day("2026-06-10"))
        );

    // state                              whole quiz
    [Theory]
    [InlineData(ModuleState.NotPassed, true)]
    [InlineData(EditionTooOld, true)] // a refresher passes no newer edition
    [InlineData(NotRenewed, true)] // nor renews for a season
    [InlineData(RefresherOverdue, false)]
    [InlineData(RefresherFailed, false)]
    [InlineData(Current, false)]
    public void A_refresher_only_keeps_a_pass_alive(ModuleState state, bool whole) =>
        Assert.Equal(
            whole,
            Studying.AsksWholeQuiz(new(HeatStroke, state, Day("2026-06-01"), null), AllYear, Day("2026-06-10"), House)
        );

    // passed           asked            whole quiz
    [Theory]
    [InlineData("2025-06-01", "2026-02-28", false)]
    [InlineData("2025-06-01", "2026-03-01", true)] // renewing begins
    [InlineData("2026-02-28", "2026-03-01", true)] // passed a day before the season
    [InlineData("2026-03-01", "2026-04-30", false)] // renewed already
    [InlineData("2026-03-01", "2027-02-28", false)]
    [InlineData("2026-03-01", "2027-03-01", true)]
    public void From_the_first_day_of_renewing_the_whole_quiz_is_asked_of_a_module_of_the_season(
        string passed,
        string asked,
        bool whole
    )
    {
        var found = new ModuleFound(HeatStroke, Current, Day(passed), null);

        Assert.Equal(whole, Studying.AsksWholeQuiz(found, EachSpring, Day(asked), House));
        Assert.False(Studying.AsksWholeQuiz(found, AllYear, Day(asked), House));
    }

    [Fact]
    public void A_salon_in_another_season_renews_in_its_own_months()
    {
        var south = House with { RenewFromMonth = 9, RenewByMonth = 11 };
        var found = new ModuleFound(HeatStroke, Current, Day("2026-03-01"), null);

        Assert.False(Studying.AsksWholeQuiz(found, EachSpring, Day("2026-08-31"), south));
        Assert.True(Studying.AsksWholeQuiz(found, EachSpring, Day("2026-09-01"), south));
    }
}
