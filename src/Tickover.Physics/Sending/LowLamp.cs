namespace Tickover.Physics.Sending;

/// <summary>A lamp worked by the sender's own contact.</summary>
/// <param name="LevelMetres">Level at the float below which it lights, m above the floor.</param>
/// <param name="DelaySeconds">Time constant of the contact, s: 0 a bare contact, some ten for a heated one.</param>
public sealed record LowLamp(double LevelMetres, double DelaySeconds);
