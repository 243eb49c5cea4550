namespace Academy.Web.Access;

/// <summary>The name that somebody signs in with: short and her own choice, or an e-mail address. It is not who she is.</summary>
public static class SignInNames
{
    public const int Longest = 80;
    public const int Shortest = 2;

    /// <summary>Spaces around it and twice between words are slips.</summary>
    public static string Tidy(string name) => string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
