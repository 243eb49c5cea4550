using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

public class QuickPhrasesTests
{
    [Fact]
    public void Each_list_has_about_a_dozen_short_phrases_and_every_code_is_used_once()
    {
        Phrase[] all = [.. QuickPhrases.Groom, .. QuickPhrases.SignOff];

        Assert.InRange(QuickPhrases.Groom.Count, 10, 15);
        Assert.InRange(QuickPhrases.SignOff.Count, 10, 15);
        Assert.Equal(all.Length, all.Select(phrase => phrase.Code).Distinct(StringComparer.Ordinal).Count());
        Assert.All(all, phrase => Assert.Matches("^[a-z]+(-[a-z]+)*$", phrase.Code));
        Assert.All(all, phrase => Assert.InRange(phrase.Words.Length, 5, 60));
        Assert.All(all, phrase => Plain.Check(phrase.Words));
    }

    [Fact]
    public void A_code_reads_as_its_words_and_an_old_one_as_itself()
    {
        Assert.Equal("Nozzle a hand's width off and moving", QuickPhrases.Of("nozzle-moving"));
        Assert.Equal("an-old-code", QuickPhrases.Of("an-old-code"));
    }
}
