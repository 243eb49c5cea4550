using System.ComponentModel.DataAnnotations;
using Academy.Web.Access;

namespace Academy.Web.Features.Shared;

/// <summary>What somebody signs in with, as she chooses it: when the salon is opened, and behind a one-time link.</summary>
public sealed class Credentials
{
    [
        Required(ErrorMessage = "Name to sign in with: write one, or an e-mail address"),
        StringLength(
            SignInNames.Longest,
            MinimumLength = SignInNames.Shortest,
            ErrorMessage = "Name to sign in with: between 2 and 80 characters"
        )
    ]
    public string? Name { get; set; }

    [Required(ErrorMessage = "Password: write the one that you want")]
    public string? Password { get; set; }

    public bool OwnDevice { get; set; }

    internal string TidyName => SignInNames.Tidy(Name!);

    /// <summary>Why the password cannot be taken; nothing where it is missing, which is said elsewhere.</summary>
    internal IEnumerable<string> Against(params string?[] names) =>
        Password is null ? [] : PasswordRules.Against(Password, names.Append(Name).OfType<string>());
}
