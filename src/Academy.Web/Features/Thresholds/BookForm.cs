namespace Academy.Web.Features.Thresholds;

/// <summary>What every form about the salon's book brings along.</summary>
public abstract class BookForm
{
    public Guid Operation { get; set; }

    /// <summary>The version of the book that the form was shown at.</summary>
    public long Version { get; set; }
}
