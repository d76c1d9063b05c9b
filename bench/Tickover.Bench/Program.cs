using Tickover.Bench.Peer;

return args switch
{
    ["peer", var executable, var input] => PeerComparison.Run(executable, input),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("Tickover.Bench peer EXECUTABLE INPUT");
    return 2;
}
