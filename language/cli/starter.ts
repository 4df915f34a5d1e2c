// The first file of somebody new: a small invented machine, with a comment at each thing that he will want to write next. It checks
// clean, so that the first finding he sees is his own.

/** The text of the starter file. */
export const starter = `# A first procedure. Check it with:  stripdown check FILE
# Every line begins with a word. Text in quotes is printed as it stands. Figures carry their unit.
# All figures here are invented: put in those of the machine's maker.

unit vent "Workshop fan WF-1" {
  base housing         # what stays on the stand
  renew always gasket  # new ones go in, every time

  part housing "Fan housing" { mass 6.5 kg }
  part guard guard "Wire guard" { mass 0.4 kg }
  part wheel "Fan wheel" { mass 0.9 kg  behind guard }  # behind: cannot be reached before the guard is off
  part gasket-1 gasket "Housing gasket" { between guard and housing }

  fastener guard-screws screw "Guard screws" {
    count 4  size M5x12  drive hex 8  torque 4 N·m
    joins guard to housing  # the guard hangs on the housing by these
  }
  fastener wheel-nut nut "Wheel nut" {
    size M8  drive hex 13  torque 12 N·m
    joins wheel to housing  behind guard
  }

  # What can hurt, what it endangers, and what has to be done first.
  hazard start rotating danger "Fan can start" {
    on guard, wheel-nut
    precaution lock-out "Pull the plug and keep it with you." back "Put the plug back in."
    precaution try-start "Switch on: nothing may turn."
  }
  # Kinds of hazard that this machine does not have are said so, with the reason:
  no pressure "Nothing in it holds air or oil."
}

procedure clean-wheel "Take the fan wheel off and clean it" for vent {
  aim wheel off  # what has to be off at the end of the strip

  step "Make sure that the fan cannot start" {
    lock-out start
    try-start start
  }
  step "Take the guard off" {
    undo guard-screws into tray A
    remove guard
    remove gasket-1
  }
  step "Take the wheel off" {
    hold wheel
    undo wheel-nut
    remove wheel
    clean wheel
  }
  # The way back is computed: last off, first on. What else there is to do then stands here.
  finish {
    test "Turn the wheel by hand: it runs free"
  }
}
`;
