using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Grooms;

/// <summary>One groom and everything that was ever said about it.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class StoryModel(Who who, GroomQueries grooms, TimeProvider clock) : AcademyPage
{
    public StoryView View { get; private set; } = null!;

    public WaitingLine Waiting => WaitingLine.Of(who.Person.Id.Value, clock.GetUtcNow());

    public async Task<IActionResult> OnGetAsync(Guid id, CancellationToken stop)
    {
        var facts = await grooms.FactsOfAsync(new(id), stop);
        var told = GroomStories.Of(facts);
        var start = GroomStories.StartOf(facts);
        if (!PartIn(told, start).Any(MaySee) || await grooms.DogNameAsync(told?.Groom.Dog ?? start!.Dog, stop) is not { } dog)
            return NotFound();

        View = StoryView.Of(new(id), dog, facts, who.Person, Names.Of(who.Book, clock.GetUtcNow()));
        return Page();
    }

    private static IEnumerable<PersonId> PartIn(GroomStory? told, StartedGroom? start) =>
        (told?.Groom.Doers ?? []).Concat(new[] { told?.Groom.Watcher, start?.By, start?.Watcher }.OfType<PersonId>());

    // A senior sees what she watched, also where another senior groomed; a junior only what she had a hand in.
    private bool MaySee(PersonId part) => who.Book.Find(part) is { } person && who.Person.MaySee(person);
}
