using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Web.Wording;

namespace Academy.Web.Features.Study;

/// <summary>A note to a module.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Words">What it says.</param>
/// <param name="By">Who says it.</param>
/// <param name="MayTakeBack">Whether the reader wrote it, or is the owner.</param>
public sealed record NoteLine(Guid Id, string Words, string By, bool MayTakeBack)
{
    /// <summary>The notes of a module, oldest first; one whose words were erased is left out.</summary>
    public static IReadOnlyList<NoteLine> Of(SalonBook book, ModuleName module, Person reader, Names names) =>
        [
            .. book
                .Notes.Where(note => note.Module == module && !note.Says.IsEmpty)
                .Select(note => new NoteLine(
                    note.Note.Value,
                    note.Says.Text,
                    names.Of(note.By),
                    reader.Id == note.By || reader.Role == Role.Owner
                )),
        ];
}
