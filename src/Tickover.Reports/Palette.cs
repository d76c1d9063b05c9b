namespace Tickover.Reports;

internal static class Palette
{
    internal static readonly string[] Cividis =
        ["#00224e", "#1a386f", "#404c6c", "#5b616e", "#757575", "#918c78", "#aea371", "#cbba65", "#e6d153", "#fee838"];
}
