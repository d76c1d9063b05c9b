namespace Tickover.Bench.FaultFinding;

/// <summary>What cars come in with, and what was wrong with them, the commonest first: written down from the trade's table for this study, apart from the knowledge the finder has.</summary>
/// <remarks>No chances stand here; SimulatedCar draws by place. Names of causes and tests are the finder's, for its questions have to be understood.</remarks>
internal static class CarComplaints
{
    internal const string Rows = """
        fuel-smell            permeating-hose vent-inside-body sender-gasket cap-seal
        drip-when-full        filler-neck-hose tank-upper-seam sender-gasket
        dies-after-miles      vent-blocked pickup-dirty fuel-vapour coil-hot
        flags-on-hills        filter-clogged pickup-dirty pump-weak suction-air
        one-tank-empties      crosspipe-blocked crosspipe-airlock vents-unequal tap-shut
        needle-hard-over      sender-open-circuit sender-short gauge-no-feed gauge-faulty
        gauge-reads-low       sender-earth sender-wire-resistance stabiliser-low
        gauge-reads-high      stabiliser-unregulated stabiliser-earth tanks-not-level
        half-when-full        sender-arm-bent wrong-sender second-sender-wiring tanks-not-level
        runs-out-early        sender-float-fouls sender-arm-bent pickup-short fuel-in-other-tank
        needle-swings         baffle-loose crosspipe-large gauge-damping-lost
        dirt-in-filter        lining-shedding tank-pitting free-water rigid-pipe-rust
        tank-overflows        return-one-tank vents-crossed crosspipe-small
        bowls-dry             tank-empty tap-shut pump-no-feed filter-clogged suction-air pump-valves
        pump-never-slows      float-valve-leak fuel-leak suction-air pump-valves
        floods-one            float-valve-leak float-heavy float-level-high float-valve-large
        floods-all            fuel-pressure-high return-blocked float-valve-large valve-tips-swollen
        slow-start-hot        percolation bowls-boiled coil-hot cranking-slow
        slow-start-week       bowls-drained pump-valves starter-weak
        dies-hot-traffic      fuel-vapour coil-hot bowls-boiled
        oil-rises             float-valve-leak pump-diaphragm
        fades-full-throttle   pump-weak filter-clogged float-valve-small vent-blocked
        no-idle               idle-jet-blocked air-leak-common mixture-tip-broken plate-shut-too-far
        screw-no-effect       plates-too-open starter-on float-level-high idle-outlet-blocked
        rich-idle-all         starter-on float-level-high idle-bleeds-blocked idle-jets-large
        lean-idle-all         air-leak-common float-level-low idle-jets-small fuel-blend
        one-cylinder-lean     air-leak-one idle-outlet-blocked screw-oring
        flat-spot-slow        idle-jets-small progression-blocked plates-too-open main-late
        flat-spot-stab        pump-nozzle-blocked accel-diaphragm accel-balls linkage-slack backbleed-big
        black-puff            shot-large accel-outlet-leak float-level-high
        surges-cruise         idle-jets-small advance-hunting wrong-tube
        hesitates-changeover  main-late float-level-low wrong-tube choke-large
        lean-top              pump-weak corrector-big main-small
        rich-top              aircleaner-restricted corrector-small main-large
        spits-one             inlet-valve-tight idle-jet-blocked leads-crossed timing-wrong
        idle-rises-hot        linkage-expands advance-sticks fast-idle-cam spindle-binding
        hangs                 air-leak-common advance-sticks rod-holds-plates bypass-open
        idle-too-high         rod-holds-plates bush-short bypass-open plate-misfit air-leak-one
        barrel-dead-meter     meter-seal plate-loose plate-shut-too-far
        cd-piston-sticks      cd-needle-offcentre cd-dirt cd-rod-bent cd-spring
        cd-flat-spot          cd-damper-oil cd-diaphragm cd-damper-valve
        choke-when-warm       main-small air-leak-common pump-weak
        throttle-stiff        cable-binding rod-over-centre spring-slipped plate-rubbing choke-arm-fouls
        spread-constant       plate-misfit stop-unequal bypass-open
        equal-air-low-vacuum  air-leak-one weak-cylinder
        spread-percent        meter-seal choke-differs trumpet-differs
        spread-grows          rod-length lever-angle spindle-twisted balls-worn
        no-repeat             balls-worn meter-tilt engine-drift idle-hunting
        far-barrel-low        spindle-twisted plate-loose centre-drive-far
        banks-differ-idle     stop-unequal bank-timing air-leak-one
        banks-differ-open     rod-length cable-stretch linkage-expands
        balance-lost          locknut-loose base-nuts balls-worn rod-bent
        high-equal-flow       timing-late idle-mixture-weak engine-drag meter-seal
        low-equal-flow        air-leak-common timing-early advance-sticks tachometer-wrong
        balanced-rough        weak-cylinder plug-lead-cap mounts
        reads-lean-cruise     plug-lead-cap exhaust-leak main-small
        bank-black-plugs      spark-weak-bank starter-on float-level-high
        backfires-stab        idle-jets-small timing-wrong inlet-valve-tight
        pops-overrun          exhaust-leak idle-mixture-weak ignition-cutting
        header-cold           plug-lead-cap weak-cylinder late-heating-pipe
        vacuum-low            timing-late valve-timing-late exhaust-blocked
        vacuum-ticks          weak-cylinder plug-lead-cap head-gasket
        misfire-load          plug-lead-cap coil-hot pump-weak
        dies-with-fans        volts-low ignition-earth pump-low-volts
        since-rebalanced      mixture-before-air starter-on rod-holds-plates
        """;
}
