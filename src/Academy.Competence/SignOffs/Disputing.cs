using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;

namespace Academy.Competence.SignOffs;

/// <summary>Disputes, answers, and late sign-offs that the owner lets count. Everything stays visible.</summary>
public static class Disputing
{
    /// <summary>Whoever was judged disputes the sign-off in force.</summary>
    /// <param name="story">The groom that was judged.</param>
    /// <param name="signed">The sign-off disputed.</param>
    /// <param name="isDisputed">Whether it was disputed before.</param>
    /// <param name="by">Who disputes it.</param>
    /// <param name="says">What she sees differently.</param>
    public static Decision Dispute(GroomStory story, SignOff signed, bool isDisputed, Person by, Words says)
    {
        return Decision.Of(Against(), new SignOffDisputed(signed.Groom, signed.Id, by.Id, says));

        IEnumerable<Reason> Against()
        {
            if (signed.Subject != by.Id)
                yield return new NotHerSignOff();
            if (story.SignOffOf(signed.Subject)?.Id != signed.Id)
                yield return new NotTheSignOffInForce();
            if (isDisputed)
                yield return new DisputedAlready();
            if (says.IsEmpty)
                yield return new WordsNeeded(WordsFor.Dispute);
        }
    }

    /// <summary>The owner answers a dispute; where she was the judge the record says so.</summary>
    /// <param name="signed">The sign-off disputed.</param>
    /// <param name="dispute">The dispute over it; null where there is none.</param>
    /// <param name="owner">Who answers.</param>
    /// <param name="overturn">Whether the sign-off is taken back.</param>
    /// <param name="says">What she answers.</param>
    public static Decision Answer(SignOff signed, DisputeStory? dispute, Person owner, bool overturn, Words says)
    {
        return Decision.Of(
            Against(),
            new DisputeAnswered(signed.Groom, signed.Id, overturn, OwnerWasJudge: signed.Senior == owner.Id, says)
        );

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (dispute is null || dispute.SignOff != signed.Id)
                yield return new NotDisputed();
            if (dispute is { Answer: not null })
                yield return new AnsweredAlready();
            if (says.IsEmpty)
                yield return new WordsNeeded(WordsFor.Answer);
        }
    }

    /// <summary>The owner lets a late sign-off count, with a reason.</summary>
    public static Decision AdmitLate(GroomStory story, SignOff signed, Person owner, Words reason)
    {
        return Decision.Of(Against(), new LateSignOffAdmitted(signed.Groom, signed.Id, reason));

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (!signed.IsLate || story.Admitted.Contains(signed.Id))
                yield return new WasNotLate();
            if (reason.IsEmpty)
                yield return new WordsNeeded(WordsFor.LateCounts);
        }
    }

    /// <summary>The story as it would stand if the owner took this sign-off back: for showing what that would do.</summary>
    public static GroomStory ForeseeOverturned(GroomStory story, SignOff signed) =>
        story with
        {
            Overturned = story.Overturned.With(signed.Id),
        };

    /// <summary>The story as it would stand if the owner let this late sign-off count.</summary>
    public static GroomStory ForeseeAdmitted(GroomStory story, SignOff signed) =>
        story with
        {
            Admitted = story.Admitted.With(signed.Id),
        };
}
