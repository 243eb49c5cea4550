using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
using Academy.Competence.Standings;
using Academy.Modules;
using Academy.Web.Demo;

namespace Academy.Web.Tests.Demo;

/// <summary>The demo's figures are invented; what is checked is that its story goes through the real decisions and shows every standing.</summary>
public sealed class DemoHistoryTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 14, 30, 0, TimeSpan.Zero);

    private static readonly IReadOnlyList<Module> Library = ModuleLibrary.Load(Path.Combine(Repository.Root, "modules")).Modules;

    private static readonly DemoFloor Floor = DemoHistory.Floor(Now, Library);

    [Fact]
    public void The_history_is_eighteen_months_of_about_2500_grooms()
    {
        var grooms = Floor.Told.SelectMany(told => told.Granted.Facts).OfType<GroomLogged>().ToArray();

        Assert.InRange(grooms.Length, 2_200, 3_200);
        Assert.InRange((Now - grooms.Min(told => told.Groom.EndedAt)).TotalDays, 530, 550);
        Assert.All(Floor.Told, told => Assert.True(told.Hand.Now <= Now));
    }

    [Fact]
    public void Today_shows_every_standing_and_every_limit()
    {
        var standings = Floor.Team(Now) is var team ? team.People.SelectMany(person => team.Of(person.Id)).ToArray() : [];

        Assert.Equal(Enum.GetValues<StandingKind>(), standings.Select(standing => standing.Kind).Distinct().Order());
        Assert.Contains(standings, standing => standing is { Kind: StandingKind.Alone, IsWatched: true });
        Assert.Contains(standings, standing => standing is { Kind: StandingKind.Alone, IsException: true });
        Assert.Contains(standings, standing => standing is { Kind: StandingKind.Alone, Limits.NotOnHotDays: true });
        Assert.Contains(standings, standing => standing is { Kind: StandingKind.Alone, Limits.UpToKg: not null });
        Assert.Contains(standings, standing => standing is { Kind: StandingKind.Alone, Limits.Until: not null });
        Assert.Contains(standings, standing => standing is { Kind: StandingKind.Alone, Limits.OnlyWithSeniorIn: true });
    }

    [Fact]
    public void The_story_has_a_dispute_a_correction_a_late_sign_off_a_review_a_leaver_and_a_flag()
    {
        var facts = Floor.Told.SelectMany(told => told.Granted.Facts).ToArray();

        Assert.Equal(2, facts.OfType<SignOffDisputed>().Count());
        Assert.Single(facts.OfType<DisputeAnswered>());
        Assert.Contains(facts.OfType<SignedOff>(), told => told.SignOff.Replaces is not null);
        Assert.Contains(facts.OfType<SignedOff>(), told => told.SignOff.IsLate);
        Assert.Contains(facts.OfType<IncidentReviewed>(), told => told.Review.IsTechnique);
        Assert.Single(facts.OfType<PersonLeft>());
        Assert.Single(facts.OfType<GroomFlagged>());
    }

    [Fact]
    public void The_same_moment_tells_the_same_story() =>
        Assert.Equal(
            Floor.Told.SelectMany(told => told.Granted.Facts).OfType<GroomLogged>(),
            DemoHistory.Of(Now, Library).SelectMany(told => told.Granted.Facts).OfType<GroomLogged>()
        );
}
