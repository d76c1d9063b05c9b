namespace Tickover.Workshop.Cars;

/// <summary>Where the documents of the cars in the workshop are kept.</summary>
/// <remarks>Documents that cannot be read are listed with their faults; nothing on the shelf is hidden.</remarks>
public interface ICarShelf
{
    /// <summary>The longest document taken, in characters: far beyond any car, and small enough to read at once.</summary>
    const int LongestDocument = 1_000_000;

    /// <summary>All documents by name, the unreadable ones among them.</summary>
    /// <returns>The shelf as it is now.</returns>
    IReadOnlyList<ShelvedCar> List();

    /// <summary>One document.</summary>
    /// <param name="id">Its name.</param>
    /// <returns>The document, or null where none is filed under that name.</returns>
    ShelvedCar? Read(CarId id);

    /// <summary>Writes a document whole or not at all and keeps the version before it.</summary>
    /// <param name="id">The name it is filed under; a new one makes a new document.</param>
    /// <param name="document">The text.</param>
    void Save(CarId id, string document);

    /// <summary>Goes back to the version before the last save.</summary>
    /// <param name="id">The name.</param>
    /// <returns>Whether there was one.</returns>
    bool Undo(CarId id);

    /// <summary>Takes a document off the shelf; it is kept among the earlier versions.</summary>
    /// <param name="id">The name.</param>
    /// <returns>Whether there was one.</returns>
    bool Remove(CarId id);
}
