namespace Tickover.Bench.FaultFinding;

/// <summary>What a car with a cause shows when it is tested, and what a car without shows (the star): from the expected results of the trade's table, and where it is silent from what the part does.</summary>
/// <remarks>Two results after a cause: as often the one as the other.</remarks>
internal static class CarShows
{
    internal const string Rows = """
        smell-cloths        *nowhere  permeating-hose=cloth vent-inside-body=vent sender-gasket=plate,nowhere cap-seal=cap,nowhere filler-neck-hose=cloth,nowhere
        fill-in-steps       *dry  filler-neck-hose=neck tank-upper-seam=seam sender-gasket=plate
        open-cap-spark      *nothing  vent-blocked=hiss coil-hot=no-spark pickup-dirty=bowl-empty fuel-vapour=cools bowls-boiled=cools
        flow-both-sides     *both-good  filter-clogged=after-poor pickup-dirty=both-poor pump-weak=both-poor suction-air=bubbles pump-valves=both-poor tap-shut=both-poor pump-low-volts=both-poor
        supply-from-can     *same  pickup-dirty=cured vent-blocked=cured suction-air=cured,same rigid-pipe-rust=cured fuel-blend=cured free-water=cured tap-shut=cured tank-empty=cured pickup-short=cured
        levels-caps         *level  vents-unequal=caps-move crosspipe-blocked=blocked tap-shut=blocked crosspipe-airlock=clears fuel-in-other-tank=blocked
        feed-resistances    *follows-half  sender-open-circuit=follows-open sender-short=follows-short gauge-no-feed=dead gauge-faulty=dead
        earth-drop          *good  sender-earth=drop sender-wire-resistance=wire stabiliser-low=mean-low
        mean-volts          *steady  stabiliser-unregulated=rises stabiliser-earth=rises
        ohms-and-wait       *right  sender-arm-bent=short-span wrong-sender=other-family second-sender-wiring=half-double tanks-not-level=waiting
        drain-after-stop    *elsewhere  sender-float-fouls=little sender-arm-bent=little pickup-short=this-tank fuel-in-other-tank=other-tank crosspipe-blocked=other-tank
        bend-both-ways      *hardly  crosspipe-large=slowly baffle-loose=at-once gauge-damping-lost=at-once
        cut-filter          *clean  lining-shedding=films tank-pitting=powder free-water=layer rigid-pipe-rust=pipe,powder
        divert-return       *still  return-one-tank=stops crosspipe-small=stops
        listen-pump         *good  pump-no-feed=silent-dead suction-air=spurts filter-clogged=nothing pump-valves=nothing tank-empty=spurts,nothing tap-shut=nothing pump-weak=nothing,silent-volts
        clamp-outlet        *keeps  float-valve-leak=stops fuel-leak=stops float-valve-large=stops valve-tips-swollen=stops
        tap-refill          *stays  float-valve-leak=returns
        pressure-last       *right  fuel-pressure-high=above return-blocked=above pump-weak=sags filter-clogged=sags pickup-dirty=sags vent-blocked=sags,right pump-low-volts=sags
        hot-look            *nothing  percolation=drips bowls-boiled=low-bowl coil-hot=no-spark cranking-slow=slow
        prime-first         *slowly  bowls-drained=at-once pump-valves=at-once
        rag-and-spark       *nothing  fuel-vapour=recovers coil-hot=no-spark bowls-boiled=flooded percolation=flooded
        overnight-dip       *neither  float-valve-leak=only-on pump-diaphragm=drain-wet
        log-pressure        *fine  pump-weak=both filter-clogged=both vent-blocked=both pickup-dirty=both float-valve-small=steady-lean main-small=steady-lean corrector-big=steady-lean
        cap-off-pull        *same  vent-blocked=better
        swap-idle-jet       *stays  idle-jet-blocked=moves
        screw-feel          *usual  mixture-tip-broken=none
        smoke               *nowhere  air-leak-common=hoses air-leak-one=one bush-short=one base-nuts=one
        screw-in            *at-once  plates-too-open=lowered starter-on=starter float-level-high=drips idle-outlet-blocked=never mixture-tip-broken=never
        push-starter        *stays  starter-on=falls
        clamp-hoses         *same  air-leak-common=changes
        side-load           *same  air-leak-one=change bush-short=change
        hold-slow           *no  progression-blocked=one idle-jets-small=all plates-too-open=all main-late=changeover wrong-tube=changeover,no
        watch-shots         *good  pump-nozzle-blocked=one-weak accel-diaphragm=both-weak accel-balls=both-weak backbleed-big=both-weak linkage-slack=late
        halve-stroke        *same  shot-large=better accel-outlet-leak=drips
        fix-advance         *nothing  idle-jets-small=richer advance-hunting=fixed wrong-tube=one-speed main-late=one-speed
        raise-level         *same  main-late=down float-level-low=down
        pressure-at-top     *right  pump-weak=sags filter-clogged=sags corrector-big=right-mid main-small=lean-both float-level-low=lean-both,right
        cleaner-off         *right  aircleaner-restricted=leans corrector-small=right-mid main-large=rich-both float-level-high=rich-both
        clearance-swap      *none  inlet-valve-tight=nil idle-jet-blocked=moves leads-crossed=leads
        push-levers         *stays  linkage-expands=falls spindle-binding=falls rod-holds-plates=falls
        strobe-fall         *at-once  advance-sticks=lags
        stops-touch         *touch  rod-holds-plates=lifted linkage-expands=lifted spindle-binding=lifted,touch fast-idle-cam=lifted
        drop-rods           *none  rod-holds-plates=rods bypass-open=bypasses bush-short=light-spindle plate-misfit=light-edge linkage-expands=rods
        hand-over-barrel    *same  meter-seal=changes
        lift-and-drop       *free  cd-needle-offcentre=jet-raised cd-dirt=always cd-rod-bent=always cd-spring=spring
        blip-pistons        *alike  cd-diaphragm=one-less cd-damper-oil=flutter cd-damper-valve=flutter
        starter-touch       *nowhere  air-leak-common=idle-only idle-mixture-weak=idle-only main-small=all pump-weak=all,nowhere float-level-low=all fuel-blend=all air-leak-one=idle-only
        disconnect-stages   *free  cable-binding=cable rod-over-centre=rods spring-slipped=spring choke-arm-fouls=choke plate-rubbing=spindle spindle-binding=spindle
        bypass-and-light    *neither  bypass-open=vanishes plate-misfit=light
        leak-down-odd       *low  weak-cylinder=high head-gasket=high inlet-valve-tight=high
        second-adaptor      *neither  meter-seal=adaptor choke-differs=chokes
        dial-plates         *together  rod-length=constant balls-worn=constant lever-angle=growing spindle-twisted=one-spindle plate-loose=one-spindle
        read-five           *repeat  balls-worn=play meter-tilt=square engine-drift=drift idle-hunting=swing
        light-box           *alike  spindle-twisted=differ plate-loose=differ plate-misfit=differ
        strobe-banks        *neither  bank-timing=timing stop-unequal=stops
        drop-cross-rod      *unequal  rod-length=equal cable-stretch=equal linkage-expands=hot
        round-beside        *none  locknut-loose=one base-nuts=one balls-worn=side rod-bent=side
        advance-and-turn    *none  timing-late=advance idle-mixture-weak=screws meter-seal=meter
        smoke-strobe-tach   *none  air-leak-common=smoke timing-early=early advance-sticks=stuck tachometer-wrong=counter air-leak-one=smoke
        drop-test           *equal  weak-cylinder=one-small plug-lead-cap=one-small head-gasket=one-small,equal idle-jet-blocked=one-small
        hc-beside-lambda    *neither  plug-lead-cap=hc-high exhaust-leak=oxygen main-small=improves idle-jets-small=improves
        swap-coil-sides     *stays  spark-weak-bank=follows
        starter-retard      *none  idle-jets-small=starter timing-wrong=retard inlet-valve-tight=clearance main-small=starter
        seal-and-turn       *neither  exhaust-leak=seal idle-mixture-weak=richer
        advance-raise       *neither  timing-late=rises exhaust-blocked=falls
        leak-down-listen    *nowhere  weak-cylinder=hiss head-gasket=neighbour inlet-valve-tight=hiss
        swap-and-log        *none  plug-lead-cap=plugs coil-hot=coil pump-weak=pressure filter-clogged=pressure
        volts-under-load    *nowhere  volts-low=battery ignition-earth=coil pump-low-volts=pump
        as-found-beside     *nothing  mixture-before-air=screws starter-on=starter rod-holds-plates=rod
        """;

    /// <summary>Causes whose own look is a matter of judgement, on the road or by ear: seen less surely, and seen where they are not.</summary>
    internal const string HardToTell =
        "vent-inside-body fuel-vapour coil-hot percolation bowls-boiled fuel-blend advance-hunting advance-sticks main-late wrong-tube idle-jets-small corrector-big corrector-small main-small main-large shot-large "
        + "float-valve-small meter-tilt engine-drift idle-hunting plug-lead-cap timing-wrong starter-weak needle-swings suction-air exhaust-leak mounts centre-drive-far cable-stretch";

    /// <summary>Looks that another cause gives the same sign to: the cause looked for, then those that pass for it.</summary>
    internal const string PassFor = """
        main-late float-level-low
        plates-too-open idle-outlet-blocked
        starter-on float-level-high
        air-leak-one bush-short base-nuts
        air-leak-common air-leak-one
        bowls-drained pump-valves
        float-valve-small main-small corrector-big
        idle-jets-small idle-mixture-weak
        fuel-pressure-high return-blocked
        pump-weak filter-clogged pickup-dirty
        weak-cylinder head-gasket inlet-valve-tight
        rod-holds-plates linkage-expands
        linkage-expands spindle-binding
        cd-dirt cd-rod-bent
        fuel-leak filler-neck-hose
        spindle-twisted plate-loose
        """;
}
