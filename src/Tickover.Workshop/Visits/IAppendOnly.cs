namespace Tickover.Workshop.Visits;

/// <summary>A fact: it is struck out and kept again, never changed.</summary>
public interface IAppendOnly;
