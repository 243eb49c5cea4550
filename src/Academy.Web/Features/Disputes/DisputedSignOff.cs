using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;

namespace Academy.Web.Features.Disputes;

/// <summary>What the page asks of whoever looks at it: one thing at a time.</summary>
public enum Ask
{
    Nothing,
    Dispute,
    Answer,
    LetCount,
}

/// <summary>One sign-off with its groom and what was said against it.</summary>
public sealed record DisputedSignOff(OneGroom One, SignOff Signed)
{
    public DisputeStory? Dispute => One.Known.Record.Disputes.FirstOrDefault(dispute => dispute.SignOff == Signed.Id);

    public bool IsInForce => One.Story.SignOffOf(Signed.Subject)?.Id == Signed.Id;

    public bool IsAdmitted => One.Story.Admitted.Contains(Signed.Id);

    /// <summary>The owner's word comes first where one is asked; then whoever was judged may dispute.</summary>
    public Ask AskOf(Person viewer) =>
        (viewer.Role, Dispute) switch
        {
            (Role.Owner, { Answer: null }) => Ask.Answer,
            (Role.Owner, _) when IsInForce && Signed.IsLate && !IsAdmitted => Ask.LetCount,
            (_, null) when IsInForce && Signed.Subject == viewer.Id => Ask.Dispute,
            _ => Ask.Nothing,
        };

    /// <summary>The story as it would stand if the owner took the sign-off back, or let it count.</summary>
    public GroomStory Foresee(Ask ask) =>
        ask switch
        {
            Ask.Answer => Disputing.ForeseeOverturned(One.Story, Signed),
            Ask.LetCount => Disputing.ForeseeAdmitted(One.Story, Signed),
            _ => One.Story,
        };

    /// <summary>Null where this salon has no such sign-off, or where it is not hers to see: a junior sees those of her own part.</summary>
    public static async Task<DisputedSignOff?> FindAsync(
        DisputeQueries disputes,
        RecordBook records,
        Who who,
        Guid signOff,
        CancellationToken stop
    )
    {
        if (
            await disputes.GroomOfAsync(who.Salon, signOff, stop) is not { } groom
            || await OneGroom.FindAsync(records, who, groom, stop) is not { } one
        )
            return null;

        var signed = one.Story.SignOffs.First(told => told.Id.Value == signOff);
        var isHers = who.Person.Role != Role.Junior || signed.Subject == who.Person.Id;
        return isHers ? new DisputedSignOff(one, signed) : null;
    }
}
