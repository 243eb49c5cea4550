using Academy.Competence.Decisions;
using Academy.Competence.Facts;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.StoryWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Facts;

public class FactTests
{
    [Fact]
    public void A_fact_says_when_it_happened_where_that_is_not_when_it_was_recorded()
    {
        var signed = Met(Pim).Signed(Yesterday, Rosa.MayStripWire());
        (Fact Fact, DateTimeOffset? At)[] facts =
        [
            (new GroomLogged(StrippingBiscuit), StrippingBiscuit.EndedAt), // a groom is ordered by its end
            (new GroomStarted(StrippingBiscuit.Id, Biscuit.Id, Pim.Id, Rosa.Id, Now), Now),
            (new SignedOff(signed), signed.SignedAt),
            (new IncidentReported(Burn), Burn.NoticedAt),
            (new ClearanceGiven(default, default, Pim.Id, default, Now, 1, Limits.None, IsException: false, default), Now),
            (new StoodDown(default, Pim.Id, default, Now, default), Now),
            (new StandDownLifted(default, Pim.Id, default, Now, default), Now),
            (new RoomRead(new(Now, 210, 50), "bath"), Now),
            (new PersonLeft(Gus.Id, Today), null),
            (new SignOffDisputed(StrippingBiscuit.Id, signed.Id, Pim.Id, default), null),
        ];

        Assert.All(facts, one => Assert.Equal(one.At, one.Fact.HappenedAt));
    }
}
