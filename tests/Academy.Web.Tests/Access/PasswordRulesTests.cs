using System.Text;
using Academy.Web.Access;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;

namespace Academy.Web.Tests.Access;

/// <summary>
/// Length, block list and nothing else: NIST SP 800-63B-4 (3.1.1.2) and OWASP ASVS 5.0.0, V6.2.1 to V6.2.12. The passwords below
/// are made up for these tests.
/// </summary>
public sealed class PasswordRulesTests
{
    private static readonly string[] Names = ["The Wet Nose", "Rosa Marlowe", "rosa.m@salon.example"];

    [Theory]
    [InlineData("seven kettles sing quietly")]
    [InlineData("the brown dog sleeps under my table")] // a blocked word is no harm where enough stands beside it
    [InlineData("onlysmalllettersbutalotofthem")] // no capitals, digits or signs are asked for
    [InlineData("482915038471629")] // fifteen digits, of which none follows the other
    [InlineData("Ça va très bien à Orléans")]
    [InlineData("вечером тихо поёт чайник")]
    [InlineData("🐩🧼✂️🛁🐾🌡️🦴🎀🐶🧴🪮🚿🧺🐕🦮")] // each code point counts one
    [InlineData("  leading and trailing spaces stay  ")]
    public void A_long_password_of_ones_own_is_taken(string password) => Assert.Empty(PasswordRules.Against(password, Names));

    [Theory]
    [InlineData("", 0)]
    [InlineData("kettle", 6)]
    [InlineData("kettles singin", 14)]
    [InlineData("🐩🐩🐩🐩🐩🐩🐩🐩", 8)] // sixteen units of UTF-16, eight characters
    public void A_short_one_is_not_and_is_told_its_length(string password, int length) =>
        Assert.Equal(
            [$"Password: at least 15 characters, this one has {length}. A few words in a row do well"],
            PasswordRules.Against(password, Names)
        );

    [Fact]
    public void Fifteen_characters_are_enough_and_256_are_taken()
    {
        Assert.Empty(PasswordRules.Against("kettles singing"[..15], Names));
        Assert.Empty(PasswordRules.Against(Long(256), Names));
        Assert.Equal(["Password: at most 256 characters"], PasswordRules.Against(Long(257), Names));
    }

    [Theory]
    [InlineData("aaaaaaaaaaaaaaaa")]
    [InlineData("abababababababab")]
    [InlineData("qwertyqwertyqwerty")]
    [InlineData("Kettle1!Kettle1!")]
    [InlineData("1212312123121231")]
    public void One_that_repeats_itself_is_not_taken(string password) =>
        Assert.Equal(
            ["Password: this one says the same few characters again and again. Take words of your own"],
            PasswordRules.Against(password, Names)
        );

    [Theory]
    [InlineData("passwordpassword1")]
    [InlineData("P4ssw0rd!P4ssw0rt?")] // digits read as the letters they stand for
    [InlineData("correct horse battery staple")]
    [InlineData("qwertyuiopasdfghjkl")]
    [InlineData("lkjhgfdsapoiuytrewq")] // the rows of keys backwards
    [InlineData("abcdefghijklmnopqrstuvwxyz")]
    [InlineData("1234567890123456")]
    [InlineData("98765432109876543210")]
    [InlineData("Welcome2024!!!!!!")]
    [InlineData("Summer-Winter-2026")]
    [InlineData("thewetnose2026!")] // the salon
    [InlineData("Rosa.Marlowe.1987")] // the person and her year
    [InlineData("rosa12061987marlowe")] // the person and her birthday
    [InlineData("rosa.m@salon.example")] // the name that she signs in with
    [InlineData("doggroomingsalon1")]
    [InlineData("iloveyou-iloveyou-2")]
    [InlineData("!@#$%^&*()_+!@#$")]
    [InlineData("Wachtwoord-Geheim-1")]
    public void One_that_anybody_would_try_is_not_taken(string password) => Assert.Single(PasswordRules.Against(password, Names));

    [Fact]
    public void The_password_is_taken_exactly_as_typed_and_not_normalised()
    {
        var composed = "crème brûlée at teatime";
        var decomposed = composed.Normalize(NormalizationForm.FormD);

        Assert.NotEqual(composed, decomposed);
        Assert.Empty(PasswordRules.Against(composed, Names));
        Assert.Empty(PasswordRules.Against(decomposed, Names));
    }

    [Fact]
    public void The_settings_ask_no_mix_of_characters_and_hash_as_often_as_asked()
    {
        using var portal = new Portal();
        var asked = portal.Services.GetRequiredService<IOptions<IdentityOptions>>();
        var hash = portal.Services.GetRequiredService<IOptions<PasswordHasherOptions>>();

        var password = asked.Value.Password;
        Assert.False(
            password.RequireDigit || password.RequireLowercase || password.RequireUppercase || password.RequireNonAlphanumeric
        );
        Assert.Equal((15, 1), (password.RequiredLength, password.RequiredUniqueChars));
        // PBKDF2-HMAC-SHA512: at least 210,000 (OWASP ASVS 5.0.0, appendix C).
        Assert.InRange(hash.Value.IterationCount, 210_000, int.MaxValue);
    }

    private static string Long(int length) =>
        string.Concat(Enumerable.Range(0, length).Select(at => (char)('a' + (at * at + (at / 7)) % 26)));
}
