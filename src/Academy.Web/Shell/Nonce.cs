using System.Security.Cryptography;

namespace Academy.Web.Shell;

/// <summary>The word that lets the scripts of one answer run, and no others. One for each request.</summary>
public sealed class Nonce
{
    public string Word { get; } = Convert.ToBase64String(RandomNumberGenerator.GetBytes(18));
}
