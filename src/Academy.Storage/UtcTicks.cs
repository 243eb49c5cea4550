using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Academy.Storage;

/// <summary>A moment as the number of 100 ns ticks since the year 1, UTC.</summary>
public sealed class UtcTicks()
    : ValueConverter<DateTimeOffset, long>(moment => moment.UtcTicks, ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
