namespace Tickover.Web.Api;

/// <summary>An act a program wants kept.</summary>
/// <param name="Key">Chosen by the sender; the same key sent twice is kept once.</param>
/// <param name="Words">What was done, in words Undo can repeat.</param>
/// <param name="Items">The items in their new state; version 0 for a new one, else the version that was looked at.</param>
/// <param name="Visit">Number of the visit; left out for the workshop's own things.</param>
/// <param name="Person">Number of whoever did it, where that is known.</param>
public sealed record ActQuestion(Guid Key, string Words, IReadOnlyList<ItemQuestion> Items, string? Visit = null, string? Person = null);
