using Microsoft.AspNetCore.Identity;

namespace Academy.Web.Access;

/// <summary>What is asked of a password, after NIST SP 800-63B-4: length, and not one that anybody would try. Nothing else.</summary>
public static class Passwords
{
    /// <summary>The least for a password that stands alone (NIST SP 800-63B-4; OWASP ASVS 5.0.0 recommends it, V6.2.1).</summary>
    public const int Shortest = 15;

    /// <summary>Far over the 64 that must be allowed (ASVS 5.0.0, V6.2.9); a limit, because hashing costs.</summary>
    public const int Longest = 256;

    /// <summary>PBKDF2 with HMAC-SHA-512: the least that the table of ASVS 5.0.0, appendix on cryptography, asks.</summary>
    public const int Iterations = 210_000;

    internal static void Write(IdentityOptions identity)
    {
        identity.Password.RequiredLength = Shortest;
        identity.Password.RequiredUniqueChars = 1;
        identity.Password.RequireDigit = false;
        identity.Password.RequireLowercase = false;
        identity.Password.RequireUppercase = false;
        identity.Password.RequireNonAlphanumeric = false;
        identity.User.AllowedUserNameCharacters = "";
    }
}
