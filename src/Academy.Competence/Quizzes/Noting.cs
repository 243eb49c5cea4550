using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Salons;

namespace Academy.Competence.Quizzes;

/// <summary>What seniors add to a module: how it is done in this salon.</summary>
public static class Noting
{
    /// <summary>The longest note, in characters.</summary>
    public const int MostLetters = 600;

    /// <summary>Adds a note under a module.</summary>
    public static Decision Note(NoteId note, ModuleName module, Person by, string says, DateOnly today)
    {
        return Decision.Of(Against(), new ModuleNoted(note, module, by.Id, new Words(says)));

        IEnumerable<Reason> Against()
        {
            if (!by.WorksOn(today))
                yield return new NotWorkingHere(by.Id);
            if (!by.MayJudgeByRole)
                yield return new SeniorOrOwnerOnly(by.Role);
            if (string.IsNullOrWhiteSpace(says))
                yield return new WordsNeeded(WordsFor.Note);
            if (says.Length > MostLetters)
                yield return new TooManyWords(says.Length, MostLetters);
        }
    }

    /// <summary>Takes a note back: by whoever wrote it, or by the owner.</summary>
    public static Decision TakeBack(ModuleNoted note, Person by) =>
        Decision.Of(
            by.Id == note.By || by.Role == Role.Owner ? [] : [new NotHerNote()],
            new ModuleNoteTakenBack(note.Note, note.Module, by.Id)
        );
}
