using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>One groom as a person may see it, with the name of its dog and the words of its salon.</summary>
public sealed record OneGroom(Known<GroomRecord> Known, string Dog, Names Names)
{
    public GroomStory Story => Known.Record.Story!;

    public Groom Groom => Story.Groom;

    /// <summary>"Pim with Biscuit".</summary>
    public string Title => $"{Counts.And([.. Groom.Doers.Select(Names.Of)])} with {Dog}";

    /// <summary>"Wire, Tuesday 3 March, 9:02 to 11:20".</summary>
    public string Groomed =>
        $"{Say.Capital(Counts.And([.. Groom.Coats.Select(Names.Of)]))}, {Names.Time.Day(Groom.StartedAt)}, {Names.Time.Clock(Groom.StartedAt)} to {Names.Time.Clock(Groom.EndedAt)}";

    /// <summary>Null where this salon has no such groom, or where it is not hers to see: a junior sees her own.</summary>
    public static async Task<OneGroom?> FindAsync(RecordBook records, Who who, Guid groom, CancellationToken stop)
    {
        var known = await records.GroomAsync(who.Salon, new GroomId(groom), stop);
        if (known?.Record.Story is not { } story || !MaySee(who.Person, story.Groom))
            return null;

        var dog = await records.DogAsync(who.Salon, story.Groom.Dog, stop);
        return new OneGroom(known, dog?.Record.Name ?? story.Groom.Breed, who.Names);
    }

    private static bool MaySee(Person viewer, Groom groom) => viewer.Role != Role.Junior || groom.Doers.Contains(viewer.Id);
}
