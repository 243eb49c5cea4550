using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Library;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Hosting;

/// <summary>What a salon does with its modules, without walking through the pages.</summary>
internal static class Lessons
{
    /// <summary>Somebody passes the whole quiz of the library's edition, every answer right.</summary>
    public static Task PassAsync(this PortalHost portal, Cast cast, Person person, string module)
    {
        var asked = portal.LibraryLesson(module).Module;
        var sitting = new Sitting(
            new AttemptId(portal.New()),
            person.Id,
            asked.Name,
            asked.Hash,
            IsRefresher: false,
            Seed: 1,
            portal.Now,
            ReadOutBy: null
        );
        var answers = Quizzing
            .Draw(asked, sitting.Seed)
            .Select(question => new Competence.Quizzes.Answer(question.Id, question.Kind.Right));
        return portal.KeepAsync(cast.Salon, sitting.HandIn(asked, [.. answers], portal.Now), person);
    }

    /// <summary>The salon publishes an edition of its own: the one it has, or the library's, with each piece of its text replaced.</summary>
    /// <returns>The edition's fingerprint.</returns>
    public static Task<string> PublishAsync(
        this PortalHost portal,
        Cast cast,
        string module,
        string change,
        int? catchUpDays,
        params IEnumerable<(string From, string To)> changes
    ) => portal.PublishAsync(cast.Salon, cast.Owner, module, change, catchUpDays, changes);

    /// <inheritdoc cref="PublishAsync(PortalHost, Cast, string, string, int?, IEnumerable{ValueTuple{string, string}})"/>
    public static async Task<string> PublishAsync(
        this PortalHost portal,
        SalonId salon,
        Person owner,
        string module,
        string change,
        int? catchUpDays,
        params IEnumerable<(string From, string To)> changes
    )
    {
        var book = await portal.DoAsync<RecordBook, SalonBook>(records => records.SalonAsync(salon, default));
        var lesson = await portal.NewestAsync(book, module);
        var next = Publishing.NextEdition(book, lesson.Module.Name);
        var text = lesson.Text.Replace($"edition: {lesson.Module.Edition}", $"edition: {next}", StringComparison.Ordinal);
        if (catchUpDays is not null)
            text = text.Replace($"since: {lesson.Module.SafetyCriticalSince}", $"since: {next}", StringComparison.Ordinal);
        foreach (var (from, to) in changes)
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }
        var written = (ModuleFiles.Of(lesson) with { Text = text }).Read().Lesson!;
        var others = Publishing.CouldReview(book, owner.Id, portal.Today).FirstOrDefault();
        await portal.DoAsync<EditionBook, bool>(async editions =>
        {
            await editions.KeepAsync(written.Module.Name, written.Module.Hash, () => KeptEdition.Of(written));
            return true;
        });
        var offered = new EditionOffered(
            written.Module,
            Findings: 0,
            owner,
            others,
            new Words(change),
            catchUpDays is { } days ? portal.Today.AddDays(days) : null
        );
        await portal.KeepAsync(salon, Publishing.Publish(offered, book, portal.Today), owner);
        return written.Module.Hash;
    }

    /// <summary>A skill asks for one module and no other.</summary>
    public static async Task OnlyModuleAsync(this PortalHost portal, Cast cast, string code, string module)
    {
        var skill = (await portal.BookAsync(cast)).Find(new SkillCode(code))!;
        await portal.KeepAsync(
            cast.Salon,
            Keeping.DescribeSkill(skill with { Modules = [new(module)] }, skill, cast.Owner),
            cast.Owner
        );
    }

    /// <summary>The salon hears of the library's editions, as it does before its first page.</summary>
    public static Task TellEditionsAsync(this PortalHost portal) =>
        portal.Services.GetRequiredService<EditionsTold>().TellAsync();

    public static Lesson LibraryLesson(this PortalHost portal, string module) =>
        portal.Services.GetRequiredService<ModuleLibrary>().Find(module)!;

    private static Task<Lesson> NewestAsync(this PortalHost portal, SalonBook book, string module) =>
        portal.DoAsync<EditionBook, Lesson>(async editions =>
            (await portal.Services.GetRequiredService<Shelves>().OfAsync(book, editions, default)).Find(module)!
        );
}
