using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Features.Quizzes;

/// <summary>
/// Refreshers keep a pass alive: one that is not passed may be tried again, and a second one in a row pauses what rests on the module,
/// with a word before it. The salon's own rule, in the shape of spaced practice (Cepeda 2008, Kang 2014).
/// </summary>
public sealed class RefresherTests
{
    private const string Blades = "blades-and-scissors";
    private const string Warning = "a second one in a row, and";

    [Fact]
    public async Task After_one_refresher_not_passed_every_page_on_the_way_to_the_next_says_what_a_second_would_pause()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        await StudiedAsync(portal, cast);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        Assert.DoesNotContain("not passed", (await pim.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);

        var failed = await HandInAsync(portal, cast, isRight: false, isRefresher: true);
        portal.Clock.Advance(TimeSpan.FromMinutes(10));

        Assert.Contains(Warning, (await pim.GetAsync($"/attempts/{failed.Value}")).Words, StringComparison.Ordinal);
        var study = await pim.GetAsync("/study");
        Assert.Equal("One module is due soon", study.Heading);
        Assert.Contains("Refresher once not passed, due again by", study.Words, StringComparison.Ordinal);
        Assert.Contains("A second one not passed pauses these:", study.Words, StringComparison.Ordinal);
        var lesson = await pim.GetAsync($"/study/{Blades}");
        Assert.Contains(Warning, lesson.Words, StringComparison.Ordinal);
        var begun = await lesson.Form().SendAsync();
        Assert.Contains(
            Warning,
            (await pim.GetAsync($"{begun.Location!.Split('?')[0]}/hand-in")).Words,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "refresher once not passed; a second one pauses this",
            (await pim.GetAsync("/me")).Words,
            StringComparison.Ordinal
        );
        using var ines = await portal.AsAsync(cast, cast.Owner);
        Assert.Contains(
            "A second one in a row pauses this until it is passed.",
            (await ines.GetAsync("/")).Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_second_one_pauses_what_rests_on_the_module_and_the_next_pass_brings_it_back()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        var skill = await StudiedAsync(portal, cast);
        await HandInAsync(portal, cast, isRight: false, isRefresher: true);
        portal.Clock.Advance(TimeSpan.FromMinutes(10));
        Assert.Equal(Competence.Standings.StandingKind.Alone, await StandsAsync(portal, cast, skill));

        var second = await HandInAsync(portal, cast, isRight: false, isRefresher: true);

        Assert.Equal(Competence.Standings.StandingKind.Lapsed, await StandsAsync(portal, cast, skill));
        using var pim = await portal.AsAsync(cast, cast.Junior);
        Assert.DoesNotContain(Warning, (await pim.GetAsync($"/attempts/{second.Value}")).Words, StringComparison.Ordinal);
        Assert.Contains("Refresher twice not passed", (await pim.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);
        portal.Clock.Advance(TimeSpan.FromDays(1));
        await HandInAsync(portal, cast, isRight: true, isRefresher: true);
        Assert.Equal(Competence.Standings.StandingKind.Alone, await StandsAsync(portal, cast, skill));
    }

    [Fact]
    public async Task A_refresher_draws_eight_questions_with_four_must_know_at_most_and_six_pass()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        await StudiedAsync(portal, cast);
        portal.Clock.Advance(TimeSpan.FromDays(20));
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var begun = await pim.SendAsync($"/study/{Blades}");
        var attempt = new AttemptId(new Guid(begun.Location!.Split('/')[^1].Split('?')[0]));
        var sitting = (
            await portal.DoAsync<QuizBook, UnderWay?>(quizzes => quizzes.FindAsync(cast.Salon, attempt, Stop))
        )!.Sitting;
        var asked = sitting.Draw(ModuleOf(portal));

        Assert.True(sitting.IsRefresher);
        Assert.Equal(8, asked.Count);
        Assert.InRange(asked.Count(question => question.IsMustKnow), 0, 4);
        Assert.Equal(6, sitting.Kind.RightAsked(asked.Count, []));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>Pim passed the module and is alone in a skill that asks for nothing else.</summary>
    private static async Task<SkillCode> StudiedAsync(PortalHost portal, Cast cast)
    {
        var skill = new SkillCode("smooth");
        var book = await portal.DoAsync<RecordBook, Competence.Salons.SalonBook>(books => books.SalonAsync(cast.Salon, Stop));
        await portal.KeepAsync(
            cast.Salon,
            Competence.Salons.Keeping.DescribeSkill(
                book.Find(skill)! with
                {
                    Modules = [new(Blades)],
                },
                book.Find(skill),
                cast.Owner
            ),
            cast.Owner
        );
        // The salon hears of its modules with the first page that somebody opens.
        using var anyone = portal.Anyone();
        await anyone.GetAsync("/sign-in");
        await HandInAsync(portal, cast, isRight: true, isRefresher: false);
        await portal.DeclareAsync(cast, cast.Junior, skill.Value);
        portal.Clock.Advance(TimeSpan.FromHours(1));
        return skill;
    }

    private static async Task<AttemptId> HandInAsync(PortalHost portal, Cast cast, bool isRight, bool isRefresher)
    {
        var module = ModuleOf(portal);
        var sitting = new Sitting(
            new AttemptId(portal.New()),
            cast.Junior.Id,
            module.Name,
            module.Hash,
            isRefresher,
            Seed: 3,
            portal.Now,
            ReadOutBy: null
        );
        var answers = isRight
            ? sitting.Draw(module).Select(question => new Competence.Quizzes.Answer(question.Id, question.Kind.Right)).ToList()
            : [];
        await portal.KeepAsync(cast.Salon, sitting.HandIn(module, answers, portal.Now), cast.Junior);
        return sitting.Id;
    }

    private static async Task<Competence.Standings.StandingKind> StandsAsync(PortalHost portal, Cast cast, SkillCode skill)
    {
        var team = await portal.DoAsync<RecordBook, Competence.Standings.Team>(book =>
            book.TeamAsync(cast.Salon, portal.Now, Stop)
        );
        return team[cast.Junior.Id, skill]!.Kind;
    }

    private static Module ModuleOf(PortalHost portal) => portal.Services.GetRequiredService<ModuleLibrary>().Find(Blades)!.Module;
}
