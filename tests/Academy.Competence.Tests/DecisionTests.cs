using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Salons;

namespace Academy.Competence.Tests;

public class DecisionTests
{
    private static readonly DateTimeOffset Now = new(2026, 7, 14, 9, 0, 0, TimeSpan.Zero);
    private static readonly RoomReading Reading = new(Now, 245, 60);
    private static readonly Person Junior = new(new(new Guid(1, 0, 0, new byte[8])), "Pim", Role.Junior, new(2026, 1, 1));

    [Fact]
    public void Two_granted_decisions_are_kept_together_in_their_order()
    {
        var both = Keeping.ReadRoom(Reading, "bath", Now).And(Keeping.ReadRoom(Reading, "table", Now));

        Assert.Equal<Fact>([new RoomRead(Reading, "bath"), new RoomRead(Reading, "table")], Assert.IsType<Granted>(both).Facts);
    }

    [Fact]
    public void One_refusal_stops_both_whichever_comes_first()
    {
        var granted = Keeping.ReadRoom(Reading, "bath", Now);
        var refused = Keeping.SetHouseRules(new HouseRules(), Junior);

        Assert.Equal<Reason>([new OwnerOnly()], Assert.IsType<Refused>(granted.And(refused)).Reasons);
        Assert.Equal<Reason>([new OwnerOnly()], Assert.IsType<Refused>(refused.And(granted)).Reasons);
    }

    [Fact]
    public void Two_refusals_say_every_reason_once()
    {
        var refused = Keeping.SetHouseRules(new HouseRules(), Junior);
        var unreadable = Keeping.ReadRoom(Reading with { TenthsC = 900 }, "bath", Now);

        Assert.Equal<Reason>(
            [new OwnerOnly(), new ReadingNotPlausible()],
            Assert.IsType<Refused>(refused.And(unreadable).And(refused)).Reasons
        );
    }
}
