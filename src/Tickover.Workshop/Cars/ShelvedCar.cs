namespace Tickover.Workshop.Cars;

/// <summary>A document on the shelf and what came of reading it.</summary>
/// <param name="Id">The name it is filed under.</param>
/// <param name="Document">The text of the document; empty where it could not be opened or is too large.</param>
/// <param name="Reading">The car, or everything that is wrong with the document.</param>
/// <param name="EarlierVersions">How many earlier versions are kept, which is how often Undo can step back.</param>
public sealed record ShelvedCar(CarId Id, string Document, CarReading Reading, int EarlierVersions);
