using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;

namespace Academy.Web.Features.Quizzes;

/// <summary>What a page of a quiz finds under its address.</summary>
public abstract record AtTheTable
{
    private AtTheTable() { }

    /// <summary>Where a page leads that cannot show what was found; null where there is nothing to be led to.</summary>
    public abstract string? Leads { get; }

    /// <summary>The quiz is under way and can go on.</summary>
    public sealed record Goes(DrawnQuiz Quiz) : AtTheTable
    {
        public override string Leads => Paths.Quiz(Quiz.Module, Quiz.Attempt);
    }

    /// <summary>The module has changed so that an attempt at the old edition would be worth nothing, or nothing is left of it.</summary>
    public sealed record Changed(Sitting Sitting) : AtTheTable
    {
        public override string Leads => Paths.ChangedQuiz(Sitting.Module.Value, Sitting.Id.Value);
    }

    /// <summary>It was handed in already.</summary>
    public sealed record HandedIn(Guid Attempt) : AtTheTable
    {
        public override string Leads => Paths.Attempt(Attempt);
    }

    /// <summary>There is no such quiz, or it is not for whoever asks.</summary>
    public sealed record Nothing : AtTheTable
    {
        public override string? Leads => null;
    }
}

/// <summary>Finds the quiz that a page is about, for the person who takes it and the senior who reads it out.</summary>
public sealed class QuizTableQueries(Who who, QuizBook quizzes, Editions editions, Shelf library)
{
    public async Task<AtTheTable> FindAsync(string module, Guid attempt, CancellationToken stop)
    {
        if (await quizzes.FindAsync(who.Salon, new AttemptId(attempt), stop) is not { } underWay)
            return await HandedInAsync(attempt, stop);
        var sitting = underWay.Sitting;
        if (sitting.Module.Value != module || (sitting.Person != who.Person.Id && sitting.ReadOutBy != who.Person.Id))
            return new AtTheTable.Nothing();

        return await editions.FindAsync(sitting.Module, sitting.ContentHash, stop) is { } lesson && StillCounts(lesson.Module)
            ? new AtTheTable.Goes(new DrawnQuiz(underWay, lesson))
            : new AtTheTable.Changed(sitting);
    }

    private async Task<AtTheTable> HandedInAsync(Guid attempt, CancellationToken stop) =>
        await quizzes.HandedInAsync(who.Salon, new AttemptId(attempt), stop) is { } taken
        && who.Book.Find(taken.Person) is { } person
        && who.Person.MaySee(person)
            ? new AtTheTable.HandedIn(attempt)
            : new AtTheTable.Nothing();

    // A pass of an edition from before a safety change would not count: nobody should answer on for nothing.
    private bool StillCounts(Module drawn) =>
        library.Find(drawn.Name.Value) is { } newest && drawn.Edition >= newest.Module.SafetyCriticalSince;
}
