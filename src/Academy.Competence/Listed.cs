using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Academy.Competence;

/// <summary>A short list that equals another when its items do, in order; facts, reasons and findings may hold it.</summary>
/// <remarks>A record that holds an ordinary list is equal only to itself; this one keeps records comparable as values.</remarks>
[CollectionBuilder(typeof(Listed), nameof(Listed.Of))]
public readonly struct Listed<T>(ImmutableArray<T> items) : IReadOnlyList<T>, IEquatable<Listed<T>>
{
    private readonly ImmutableArray<T> _items = items;

    private ImmutableArray<T> Items => _items.IsDefault ? [] : _items;

    /// <inheritdoc/>
    public int Count => Items.Length;

    /// <inheritdoc/>
    public T this[int index] => Items[index];

    /// <summary>Whether nothing is listed.</summary>
    public bool IsEmpty => Items.IsEmpty;

    /// <summary>The same list with one more item at its end.</summary>
    public Listed<T> With(T item) => new(Items.Add(item));

    /// <summary>The items as a span, for folds that must not allocate.</summary>
    public ReadOnlySpan<T> AsSpan() => Items.AsSpan();

    /// <inheritdoc/>
    public bool Equals(Listed<T> other) => Items.AsSpan().SequenceEqual(other.Items.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Listed<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in Items)
            hash.Add(item);
        return hash.ToHashCode();
    }

    /// <summary>Walks the items without allocating.</summary>
    public ImmutableArray<T>.Enumerator GetEnumerator() => Items.GetEnumerator();

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => ((IEnumerable)Items).GetEnumerator();

    /// <summary>Whether both lists hold equal items in the same order.</summary>
    public static bool operator ==(Listed<T> left, Listed<T> right) => left.Equals(right);

    /// <summary>Whether the lists differ in any item or in order.</summary>
    public static bool operator !=(Listed<T> left, Listed<T> right) => !left.Equals(right);

    /// <summary>The items, one after the other, for a test's message.</summary>
    public override string ToString() => $"[{string.Join(", ", Items)}]";
}

/// <summary>Makes a <see cref="Listed{T}"/>.</summary>
public static class Listed
{
    /// <summary>The list of these items; what a collection expression calls.</summary>
    public static Listed<T> Of<T>(ReadOnlySpan<T> items) => new([.. items]);

    /// <summary>The list of what a query yields, in its order.</summary>
    public static Listed<T> ToListed<T>(this IEnumerable<T> items) => new([.. items]);
}
