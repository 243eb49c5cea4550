namespace Academy.Web.Features.Shared;

/// <summary>Reads what a choice sent. Only the names of the values are choices: a number that happens to fit is none.</summary>
public static class Chosen
{
    public static T? Of<T>(string? sent)
        where T : struct, Enum => Enum.GetValues<T>().Where(value => value.ToString() == sent).Cast<T?>().FirstOrDefault();
}
