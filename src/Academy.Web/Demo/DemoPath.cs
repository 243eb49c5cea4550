using Academy.Competence.Evidence;
using Academy.Competence.Thresholds;

namespace Academy.Web.Demo;

/// <summary>
/// One person's path in one skill while the history is told. Its tally rests a few steps back: a sign-off of the evening changes
/// the last of them, and a year of grooms need not be folded anew each morning.
/// </summary>
internal sealed class DemoPath
{
    private const int Open = 8;

    private readonly List<Step> _steps = [];
    private Threshold? _under;
    private Tally _rest = Tally.Empty;
    private Tally? _tally;
    private int _rested;

    public void Put(Step step)
    {
        var place = _steps.FindLastIndex(one => !IsBefore(step, one)) + 1;
        _steps.Insert(place, step);
        Change(place);
    }

    public void TakeOff(Step step)
    {
        var place = _steps.LastIndexOf(step);
        _steps.RemoveAt(place);
        Change(place);
    }

    public Tally TallyUnder(Threshold threshold)
    {
        if (_under != threshold)
            Change(0);
        _under = threshold;
        if (_tally is not null)
            return _tally;
        for (; _rested < _steps.Count - Open; _rested++)
            _rest = _rest.Add(_steps[_rested], threshold);
        return _tally = _steps.Skip(_rested).Aggregate(_rest, (tally, step) => tally.Add(step, threshold));
    }

    private void Change(int place)
    {
        _tally = null;
        if (place < _rested)
            (_rest, _rested) = (Tally.Empty, 0);
    }

    private static bool IsBefore(Step one, Step other) =>
        (one.At, one.Id, one.Kind).CompareTo((other.At, other.Id, other.Kind)) < 0;
}
