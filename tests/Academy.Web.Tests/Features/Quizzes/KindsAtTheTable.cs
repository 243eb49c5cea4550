using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Library;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Quizzes;

/// <summary>A quiz with one question of each kind, under way for Pim.</summary>
internal sealed class KindsAtTheTable(PortalHost portal, Cast cast, Visitor pim, Guid attempt, Listed<Question> asked)
    : IAsyncDisposable
{
    public const string Module = "blades-and-scissors";

    public PortalHost Portal => portal;

    public Cast Cast => cast;

    public Visitor Pim => pim;

    public Guid Attempt => attempt;

    public Listed<Question> Asked => asked;

    public static async Task<KindsAtTheTable> BeginAsync(TestModules modules)
    {
        var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        var pim = await portal.AsAsync(cast, cast.Junior);
        var attempt = Guid.Parse((await pim.SendAsync($"/study/{Module}")).Location!.Split('/')[^1]);
        var sitting = (await FindAsync(portal, cast, attempt)).Sitting;
        var lesson = await portal.DoAsync<Editions, Lesson?>(editions =>
            editions.FindAsync(sitting.Module, sitting.ContentHash, TestContext.Current.CancellationToken).AsTask()
        );
        return new(portal, cast, pim, attempt, sitting.Draw(lesson!.Module));
    }

    /// <summary>The question of a short name as it was drawn.</summary>
    public Question Of(string id) => asked.Single(question => question.Id == id);

    public string PathOf(string id) =>
        $"/study/{Module}/quiz/{attempt}?q={asked.Index().Single(question => question.Item.Id == id).Index + 1}";

    public Task<Hosting.Answer> OpenAsync(string id) => pim.GetAsync(PathOf(id));

    public Task<Hosting.Answer> SendAsync(string id, params IEnumerable<(string, string)> typed) =>
        pim.SendAsync(PathOf(id), [.. typed, ("To", "end")]);

    public Task<Hosting.Answer> GiveAsync(string id, Given given) => SendAsync(id, Typing.Of(Of(id).Kind, given));

    public async Task<Hosting.Answer> HandInAsync() =>
        await (await pim.SendAsync($"/study/{Module}/quiz/{attempt}/hand-in")).FollowAsync();

    public async Task<Given?> KeptAsync(string id) =>
        (await FindAsync(portal, cast, attempt)).Answers.SingleOrDefault(answer => answer.QuestionId == id)?.Given;

    public async ValueTask DisposeAsync()
    {
        pim.Dispose();
        await portal.DisposeAsync();
    }

    private static Task<UnderWay> FindAsync(PortalHost portal, Cast cast, Guid attempt) =>
        portal.DoAsync<QuizBook, UnderWay>(async book =>
            (await book.FindAsync(cast.Salon, new AttemptId(attempt), TestContext.Current.CancellationToken))!
        );
}
