namespace Tickover.Bench.FaultFinding;

/// <summary>The study's own rough tables: which causes a complaint has in the trade's order, and what a test shows with each; no chances.</summary>
internal static class RoughTables
{
    /// <summary>A complaint and its causes, the commonest first by the trade's table.</summary>
    internal const string Complaints = """
        fuel-smell: permeating-hose vent-inside-body sender-gasket cap-seal
        drip-when-full: filler-neck-hose tank-upper-seam sender-gasket
        dies-after-miles: vent-blocked pickup-dirty fuel-vapour coil-hot
        flags-on-hills: filter-clogged pickup-dirty pump-weak suction-air
        one-tank-empties: crosspipe-blocked crosspipe-airlock vents-unequal tap-shut
        needle-hard-over: sender-open-circuit sender-short gauge-no-feed gauge-faulty
        gauge-reads-low: sender-earth sender-wire-resistance stabiliser-low
        gauge-reads-high: stabiliser-unregulated stabiliser-earth tanks-not-level
        half-when-full: sender-arm-bent wrong-sender second-sender-wiring tanks-not-level
        runs-out-early: sender-float-fouls sender-arm-bent pickup-short fuel-in-other-tank
        needle-swings: baffle-loose crosspipe-large gauge-damping-lost
        dirt-in-filter: lining-shedding tank-pitting free-water rigid-pipe-rust
        tank-overflows: return-one-tank vents-crossed crosspipe-small
        bowls-dry: tank-empty tap-shut pump-no-feed filter-clogged suction-air pump-valves
        pump-never-slows: float-valve-leak fuel-leak suction-air pump-valves
        floods-one: float-valve-leak float-heavy float-level-high float-valve-large
        floods-all: fuel-pressure-high return-blocked float-valve-large valve-tips-swollen
        slow-start-hot: percolation bowls-boiled coil-hot cranking-slow
        slow-start-week: bowls-drained pump-valves starter-weak
        dies-hot-traffic: fuel-vapour coil-hot bowls-boiled
        oil-rises: float-valve-leak pump-diaphragm
        fades-full-throttle: pump-weak filter-clogged float-valve-small vent-blocked
        no-idle: idle-jet-blocked air-leak-common mixture-tip-broken plate-shut-too-far
        screw-no-effect: plates-too-open starter-on float-level-high idle-outlet-blocked
        rich-idle-all: starter-on float-level-high fuel-pressure-high idle-bleeds-blocked idle-jets-large
        lean-idle-all: air-leak-common float-level-low idle-jets-small fuel-blend
        one-cylinder-lean: air-leak-one idle-outlet-blocked idle-jet-blocked screw-oring
        flat-spot-slow: idle-jets-small progression-blocked plates-too-open main-late
        flat-spot-stab: pump-nozzle-blocked accel-diaphragm accel-balls linkage-slack backbleed-big
        black-puff: shot-large accel-outlet-leak float-level-high
        surges-cruise: idle-jets-small advance-hunting wrong-tube
        hesitates-changeover: main-late float-level-low wrong-tube choke-large
        lean-top: pump-weak corrector-big main-small
        rich-top: aircleaner-restricted corrector-small main-large
        spits-one: inlet-valve-tight idle-jet-blocked leads-crossed timing-wrong
        idle-rises-hot: linkage-expands advance-sticks fast-idle-cam spindle-binding
        hangs: air-leak-common advance-sticks rod-holds-plates bypass-open
        idle-too-high: rod-holds-plates bush-short bypass-open plate-misfit air-leak-one
        barrel-dead-meter: meter-seal plate-loose plate-shut-too-far
        cd-piston-sticks: cd-needle-offcentre cd-dirt cd-rod-bent cd-spring
        cd-flat-spot: cd-damper-oil cd-diaphragm cd-damper-valve
        choke-when-warm: main-small air-leak-common pump-weak float-level-low
        throttle-stiff: cable-binding rod-over-centre spring-slipped plate-rubbing choke-arm-fouls
        spread-constant: plate-misfit stop-unequal bypass-open
        equal-air-low-vacuum: air-leak-one weak-cylinder
        spread-percent: meter-seal choke-differs trumpet-differs
        spread-grows: rod-length lever-angle spindle-twisted balls-worn
        no-repeat: balls-worn meter-tilt engine-drift idle-hunting
        far-barrel-low: spindle-twisted plate-loose centre-drive-far
        banks-differ-idle: stop-unequal bank-timing air-leak-one
        banks-differ-open: rod-length cable-stretch linkage-expands
        balance-lost: locknut-loose base-nuts balls-worn rod-bent
        high-equal-flow: timing-late idle-mixture-weak engine-drag meter-seal
        low-equal-flow: air-leak-common timing-early advance-sticks tachometer-wrong
        balanced-rough: weak-cylinder plug-lead-cap mounts
        reads-lean-cruise: plug-lead-cap exhaust-leak main-small
        bank-black-plugs: spark-weak-bank starter-on float-level-high
        backfires-stab: idle-jets-small timing-wrong inlet-valve-tight
        pops-overrun: exhaust-leak idle-mixture-weak ignition-cutting
        header-cold: plug-lead-cap weak-cylinder late-heating-pipe
        vacuum-low: timing-late valve-timing-late exhaust-blocked
        vacuum-ticks: weak-cylinder plug-lead-cap head-gasket
        misfire-load: plug-lead-cap coil-hot pump-weak
        dies-with-fans: volts-low ignition-earth pump-low-volts
        since-rebalanced: mixture-before-air starter-on rod-holds-plates
        """;

    /// <summary>A test, its answers (the one of a sound car last), and which answer each cause gives.</summary>
    internal const string Tests = """
        smell-cloths | cloth vent plate cap nowhere | permeating-hose=cloth vent-inside-body=vent sender-gasket=plate cap-seal=cap
        fill-in-steps | neck seam plate dry | filler-neck-hose=neck tank-upper-seam=seam sender-gasket=plate
        open-cap-spark | hiss no-spark bowl-empty cools nothing | vent-blocked=hiss coil-hot=no-spark pickup-dirty=bowl-empty fuel-vapour=cools bowls-boiled=cools
        flow-both-sides | after-poor both-poor bubbles both-good | filter-clogged=after-poor pickup-dirty=both-poor pump-weak=both-poor suction-air=bubbles
        supply-from-can | cured same | pickup-dirty=cured rigid-pipe-rust=cured suction-air=cured vent-blocked=cured pump-weak=same filter-clogged=same
        levels-caps | caps-move blocked clears level | vents-unequal=caps-move crosspipe-blocked=blocked tap-shut=blocked crosspipe-airlock=clears
        feed-resistances | follows-open follows-short dead follows-half | sender-open-circuit=follows-open sender-short=follows-short gauge-no-feed=dead gauge-faulty=dead
        earth-drop | drop wire mean-low good | sender-earth=drop sender-wire-resistance=wire stabiliser-low=mean-low
        mean-volts | rises steady | stabiliser-unregulated=rises stabiliser-earth=rises tanks-not-level=steady
        ohms-and-wait | short-span other-family half-double waiting right | sender-arm-bent=short-span wrong-sender=other-family second-sender-wiring=half-double tanks-not-level=waiting
        drain-after-stop | little this-tank other-tank elsewhere | sender-float-fouls=little sender-arm-bent=little pickup-short=this-tank fuel-in-other-tank=other-tank
        bend-both-ways | slowly at-once hardly | crosspipe-large=slowly baffle-loose=at-once gauge-damping-lost=at-once
        cut-filter | films powder layer pipe clean | lining-shedding=films tank-pitting=powder free-water=layer rigid-pipe-rust=pipe
        divert-return | stops still | return-one-tank=stops crosspipe-small=stops vents-crossed=still
        listen-pump | silent-volts silent-dead spurts nothing good | pump-weak=silent-volts pump-no-feed=silent-dead suction-air=spurts tank-empty=spurts tap-shut=nothing filter-clogged=nothing pump-valves=nothing tank-empty=nothing
        clamp-outlet | stops keeps | float-valve-leak=stops fuel-leak=stops float-valve-large=stops suction-air=keeps pump-valves=keeps
        tap-refill | returns stays | float-valve-leak=returns float-heavy=stays float-level-high=stays float-valve-large=stays valve-tips-swollen=stays
        pressure-last | above sags right | fuel-pressure-high=above return-blocked=above float-valve-large=right valve-tips-swollen=right pump-weak=sags filter-clogged=sags vent-blocked=sags pickup-dirty=sags
        hot-look | drips low-bowl no-spark slow nothing | percolation=drips bowls-boiled=low-bowl coil-hot=no-spark cranking-slow=slow
        prime-first | at-once slowly | bowls-drained=at-once pump-valves=at-once starter-weak=slowly
        rag-and-spark | recovers no-spark flooded nothing | fuel-vapour=recovers coil-hot=no-spark bowls-boiled=flooded percolation=flooded
        overnight-dip | only-on drain-wet neither | float-valve-leak=only-on pump-diaphragm=drain-wet
        log-pressure | both steady-lean fine | pump-weak=both filter-clogged=both vent-blocked=both pickup-dirty=both float-valve-small=steady-lean main-small=steady-lean corrector-big=steady-lean
        cap-off-pull | better same | vent-blocked=better pump-weak=same filter-clogged=same float-valve-small=same
        swap-idle-jet | moves stays | idle-jet-blocked=moves air-leak-one=stays air-leak-common=stays idle-outlet-blocked=stays screw-oring=stays mixture-tip-broken=stays plate-shut-too-far=stays inlet-valve-tight=stays leads-crossed=stays
        screw-feel | none usual | mixture-tip-broken=none
        smoke | hoses one nowhere | air-leak-common=hoses air-leak-one=one bush-short=one
        screw-in | lowered starter drips never at-once | plates-too-open=lowered starter-on=starter float-level-high=drips idle-outlet-blocked=never
        push-starter | falls stays | starter-on=falls float-level-high=stays fuel-pressure-high=stays idle-bleeds-blocked=stays idle-jets-large=stays
        clamp-hoses | changes same | air-leak-common=changes float-level-low=same idle-jets-small=same fuel-blend=same
        side-load | change same | air-leak-one=change idle-outlet-blocked=same screw-oring=same weak-cylinder=same idle-jet-blocked=same
        hold-slow | one all changeover no | progression-blocked=one idle-jets-small=all plates-too-open=all main-late=changeover wrong-tube=changeover
        watch-shots | one-weak both-weak late good | pump-nozzle-blocked=one-weak accel-diaphragm=both-weak accel-balls=both-weak backbleed-big=both-weak linkage-slack=late shot-large=good accel-outlet-leak=good
        halve-stroke | better drips same | shot-large=better accel-outlet-leak=drips float-level-high=same
        fix-advance | richer fixed one-speed nothing | idle-jets-small=richer advance-hunting=fixed wrong-tube=one-speed main-late=one-speed
        raise-level | down same | main-late=down float-level-low=down wrong-tube=same choke-large=same
        pressure-at-top | sags right-mid lean-both right | pump-weak=sags filter-clogged=sags corrector-big=right-mid main-small=lean-both float-level-low=lean-both
        cleaner-off | leans right-mid rich-both right | aircleaner-restricted=leans corrector-small=right-mid main-large=rich-both float-level-high=rich-both
        clearance-swap | nil moves leads none | inlet-valve-tight=nil idle-jet-blocked=moves leads-crossed=leads timing-wrong=none
        push-levers | falls stays | linkage-expands=falls spindle-binding=falls rod-holds-plates=falls advance-sticks=stays fast-idle-cam=stays air-leak-common=stays
        strobe-fall | lags at-once | advance-sticks=lags air-leak-common=at-once rod-holds-plates=at-once bypass-open=at-once
        stops-touch | lifted touch | rod-holds-plates=lifted linkage-expands=lifted spindle-binding=lifted
        drop-rods | rods bypasses light-spindle light-edge none | rod-holds-plates=rods bypass-open=bypasses bush-short=light-spindle plate-misfit=light-edge air-leak-one=none air-leak-common=none
        hand-over-barrel | changes same | meter-seal=changes plate-loose=same plate-shut-too-far=same weak-cylinder=same
        lift-and-drop | jet-raised always spring free | cd-needle-offcentre=jet-raised cd-dirt=always cd-rod-bent=always cd-spring=spring
        blip-pistons | one-less flutter alike | cd-diaphragm=one-less cd-damper-oil=flutter cd-damper-valve=flutter
        starter-touch | idle-only all nowhere | air-leak-common=idle-only idle-mixture-weak=idle-only main-small=all pump-weak=all float-level-low=all fuel-blend=all
        disconnect-stages | cable rods spring choke spindle free | cable-binding=cable rod-over-centre=rods spring-slipped=spring choke-arm-fouls=choke plate-rubbing=spindle
        bypass-and-light | vanishes light neither | bypass-open=vanishes plate-misfit=light stop-unequal=neither
        leak-down-odd | high low | weak-cylinder=high head-gasket=high inlet-valve-tight=high air-leak-one=low plug-lead-cap=low mounts=low late-heating-pipe=low
        second-adaptor | adaptor chokes neither | meter-seal=adaptor choke-differs=chokes trumpet-differs=neither
        dial-plates | constant growing one-spindle together | rod-length=constant balls-worn=constant lever-angle=growing spindle-twisted=one-spindle plate-loose=one-spindle
        read-five | play square drift swing repeat | balls-worn=play meter-tilt=square engine-drift=drift idle-hunting=swing
        light-box | differ alike | spindle-twisted=differ plate-loose=differ plate-misfit=differ centre-drive-far=alike
        strobe-banks | timing stops neither | bank-timing=timing stop-unequal=stops air-leak-one=neither
        drop-cross-rod | equal hot unequal | rod-length=equal cable-stretch=equal linkage-expands=hot
        round-beside | one side none | locknut-loose=one base-nuts=one balls-worn=side rod-bent=side
        advance-and-turn | advance screws meter none | timing-late=advance idle-mixture-weak=screws meter-seal=meter engine-drag=none
        smoke-strobe-tach | smoke early stuck counter none | air-leak-common=smoke timing-early=early advance-sticks=stuck tachometer-wrong=counter
        drop-test | one-small equal | weak-cylinder=one-small plug-lead-cap=one-small idle-jet-blocked=one-small head-gasket=one-small mounts=equal late-heating-pipe=equal
        hc-beside-lambda | hc-high oxygen improves neither | plug-lead-cap=hc-high exhaust-leak=oxygen main-small=improves idle-jets-small=improves
        swap-coil-sides | follows stays | spark-weak-bank=follows starter-on=stays float-level-high=stays
        starter-retard | starter retard clearance none | idle-jets-small=starter main-small=starter timing-wrong=retard inlet-valve-tight=clearance
        seal-and-turn | seal richer neither | exhaust-leak=seal idle-mixture-weak=richer ignition-cutting=neither
        advance-raise | rises falls neither | timing-late=rises exhaust-blocked=falls valve-timing-late=neither
        leak-down-listen | hiss neighbour nowhere | weak-cylinder=hiss head-gasket=neighbour plug-lead-cap=nowhere
        swap-and-log | plugs coil pressure none | plug-lead-cap=plugs coil-hot=coil pump-weak=pressure filter-clogged=pressure
        volts-under-load | battery coil pump nowhere | volts-low=battery ignition-earth=coil pump-low-volts=pump
        as-found-beside | screws starter rod nothing | mixture-before-air=screws starter-on=starter rod-holds-plates=rod
        """;
}
