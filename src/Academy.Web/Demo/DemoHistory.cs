using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Storage;

namespace Academy.Web.Demo;

/// <summary>
/// Eighteen months of the demo salon, told through the decisions that real use goes through. The same today gives the same
/// history, to the letter.
/// </summary>
internal sealed class DemoHistory
{
    private readonly DemoStory _story;
    private readonly DemoStaff _staff;
    private readonly DemoMornings _mornings;
    private readonly DemoStudy _study;
    private readonly DemoGrooms _grooms;
    private readonly DemoDecisions _decisions;

    private DemoHistory(DateTimeOffset now, IReadOnlyList<Module> modules)
    {
        _story = new DemoStory(now, TimeZoneInfo.FindSystemTimeZoneById(DemoCast.TimeZone));
        var dogs = DemoDogs.On(_story.Today);
        _staff = new DemoStaff(_story, modules, dogs);
        _mornings = new DemoMornings(_story);
        _study = new DemoStudy(_story, modules);
        _grooms = new DemoGrooms(_story, new DemoSigning(_story), dogs);
        _decisions = new DemoDecisions(_story);
    }

    /// <summary>Everything that was ever decided at the demo salon, in the order in which it was kept.</summary>
    public static IReadOnlyList<(Granted Granted, Hand Hand)> Of(DateTimeOffset now, IReadOnlyList<Module> modules) =>
        Floor(now, modules).Told;

    /// <summary>The salon's floor at the end of it.</summary>
    internal static DemoFloor Floor(DateTimeOffset now, IReadOnlyList<Module> modules)
    {
        var history = new DemoHistory(now, modules);
        var today = history._story.Today;
        history._staff.OpenTheDoors();
        for (var day = today.AddDays(-DemoCast.DaysBack); day <= today; day = day.AddDays(1))
            history.Live(day);
        return history._story.Floor;
    }

    private void Live(DateOnly day)
    {
        _staff.Join(day);
        foreach (var (_, happens) in _story.Due(day))
            happens();
        if (!IsWorkday(day))
            return;

        var isIn = _mornings.TickIn(day);
        _mornings.ReadTheRoom(day);
        _study.Study(day, isIn);
        _grooms.Groom(day, isIn);
        if (day.DayOfWeek == DayOfWeek.Saturday && day < _story.Today)
            _decisions.Decide(day);
    }

    private bool IsWorkday(DateOnly day) => day == _story.Today || day.DayOfWeek is not (DayOfWeek.Sunday or DayOfWeek.Monday);
}
