using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Model;

/// <summary>Keeps places as their text.</summary>
internal sealed class PlaceConverter() : ValueConverter<Place, string>(place => place.ToString(), text => Place.Read(text) ?? Place.WholeCar);
