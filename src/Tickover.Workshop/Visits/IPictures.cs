namespace Tickover.Workshop.Visits;

/// <summary>The pictures of the photographs.</summary>
public interface IPictures
{
    /// <summary>Takes a picture in: turns it upright, makes it no larger than needed, and leaves out everything but the picture, such as where it was taken.</summary>
    /// <param name="photograph">The photograph it will belong to; the same one twice is taken once.</param>
    /// <param name="file">What came from the camera.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>What was taken in, or why it was not.</returns>
    Task<PictureIntake> TakeInAsync(Id<Photograph> photograph, Stream file, CancellationToken cancellation = default);

    /// <summary>The picture.</summary>
    /// <param name="photograph">Which.</param>
    /// <param name="small">Whether a small one for lists will do.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>A JPEG, or null.</returns>
    Task<byte[]?> ReadAsync(Id<Photograph> photograph, PictureScale small, CancellationToken cancellation = default);
}
