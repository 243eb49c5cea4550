using System.Text;

namespace Academy.Modules.Reading;

/// <summary>Turns the bytes of a text file into text in one form.</summary>
internal static class FileText
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text without a byte order mark and with line feeds only, or null where it is not UTF-8.</summary>
    public static string? Of(byte[] bytes, Findings findings)
    {
        try
        {
            return Utf8.GetString(bytes).TrimStart('\uFEFF').ReplaceLineEndings("\n");
        }
        catch (DecoderFallbackException)
        {
            findings.Broken(0, "The file is not in UTF-8. Save it as UTF-8 text.");
            return null;
        }
    }
}
