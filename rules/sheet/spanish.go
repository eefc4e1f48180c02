package sheet

// The sheet in Spanish, by the terms of testdata/glossary-es.csv.
var _ = language("es", `
language = Español
title = Día de tender el plástico
title-down = Día de plantar
ready = LISTO
not-ready = NO LISTO. No: {}. Faltan: {}.
stop-no = No
stop-yes = Sí
stop-open = Falta
last-word = La etiqueta, las normas locales y las personas con licencia mandan sobre esta hoja.

head-go = ¿Se tiende hoy? Todo debe decir sí; si no, espere
head-boxes = Marque lo que ya está hecho
head-settings = Ajuste de la máquina
head-order = El trabajo, del suelo al plástico
head-order-down = El trabajo, del plástico viejo a las plantas nuevas
head-people = Dónde se para cada persona
head-checks = Revise cada {}
head-checks-bed = Revise cada {}: en cada cama {} ×
head-faults = Fallas y remedios
head-caution = Cuidado

verdict-no = El consejo para este campo: no tienda plástico aquí.
ball-open = Apriete una bola de suelo y tóquela con el dedo. Debe sostenerse y luego romperse.
ball-yes = La bola se sostiene y se rompe al tocarla: se puede trabajar.
ball-crumbles = La bola se deshace: muy seco. Riegue el suelo y pruebe mañana.
ball-ribbons = La bola se alarga y brilla: muy mojado. Espere.
hand-open = Mire la mano que apretó: la capacidad de campo deja una huella húmeda.
hand-yes = La mano muestra una huella húmeda: capacidad de campo.
hand-dry = La mano está seca: menos que capacidad de campo. Riegue hasta la profundidad de la cama; la cinta casi no moja una cama seca.
hand-clay = La mano está seca, pero la bola se sostiene: en arcilla basta esa humedad para trabajar.
hand-water = Gotea agua: más que capacidad de campo. Deje drenar.
wind-open = Mida el viento. Con más de {} el viento levanta el plástico.
wind-yes = Viento {}; el límite es de unos {}.
wind-no = Viento {}; el límite es de unos {}. El viento levanta el plástico: espere una hora de calma.
people-open = Cuente las personas. Hacen falta: {}.
people-yes = Personas aquí: {}; hacen falta: {}.
people-no = Personas aquí: {}; hacen falta: {}. Busque ayuda o espere.
rolls-open = Cuente los rollos de plástico aquí. Hacen falta: {}.
rolls-yes = Rollos de plástico aquí: {}; hacen falta: {}.
rolls-no = Rollos de plástico aquí: {}; hacen falta: {}. Traiga primero los demás.
rolls-unknown = Calcule primero los rollos de plástico: dé el largo y el número de camas.
tractor-open = Averigüe la potencia del tractor. Esta cama pide al menos {}.
tractor-yes = Tractor: {}; esta cama pide al menos {}.
tractor-walk = Motocultor: {}. Solo suelo plano, plástico de hasta {} de ancho; afirme la cama en una primera pasada.
tractor-no = Tractor: {}; esta cama pide al menos {}. Haga una cama más baja o pida prestado un tractor más pesado.

down-painted = El plástico viejo está pintado de blanco y la pintura está seca.
down-whole = Los hoyos están parchados o tapados, los bordes sueltos enterrados.
down-tape = La cinta vieja riega: sin fugas, con presión en el extremo.
go-parts = En la cabecera: cinta, tapones, cuchillos, palas, manómetro.
go-tools = Hay cordel, palas, azadón ancho y una barra para el rollo.
go-weight = El tractor tiene peso adelante; arco antivuelco arriba, cinturón puesto.
go-signal = Todos conocen la señal de alto: los dos brazos arriba.
go-lines = Los cables y tubos bajo el suelo están marcados.
go-backflow = Hay un dispositivo de prevención de reflujo aprobado antes de unir la cinta al agua potable.
go-label = Ya pasó el intervalo de la etiqueta después del tratamiento, o termina antes de plantar.
go-read = Todos leyeron los cuidados de esta hoja.

set-height = Altura de la cama {}.
set-flat = Sin cama: suelo plano y firme.
set-top = Cama: ancho arriba {}, base {}, de centro a centro {}.
set-crown = Lomo: el centro {} más alto que los hombros, para que no se encharque.
set-film = Plástico de {} de ancho, {}; la cara correcta hacia arriba.
set-film-by = Acolchado de {} de ancho, se vende por peso; la cara correcta hacia arriba.
set-white-up = La cara blanca hacia arriba, la negra hacia abajo.
set-silver-up = La cara plateada hacia arriba, la negra hacia abajo.
set-tuck = Entierre {} de cada lado, nunca menos de {}.
set-tape = Líneas de cinta en cada cama: {}. A {} de profundidad, goteros hacia arriba, cada {}.
set-offset = La cinta a {} de la línea de plantas, para no perforarla.
set-tension = Tenso como un tambor, sin estirar: el plástico frío se encoge, el caliente se afloja.
set-speed = Velocidad de unos {}; el trabajo toma unas {} de reloj.
set-work = El trabajo toma unas {} de una persona, {} de reloj.

flow-old = plástico viejo
flow-clear = plástico limpio
flow-patched = plástico entero
flow-watered = cama húmeda
flow-planted = plantas nuevas
down-clear = corte el cultivo viejo al ras y sáquelo. No lo arranque: las raíces rompen el plástico.
down-patch = parche las roturas, ponga suelo en los hoyos sin planta, entierre los bordes sueltos.
down-flush = lave la cinta, cierre los extremos, lea la presión al final y riegue hasta que la cama esté húmeda.
down-plant = corte hoyos nuevos entre los viejos y plante.
down-check-hole = Mire en un hoyo viejo: no sale maleza.
down-check-tape = Toque la cama a lo largo de la cinta: húmeda en todo el largo.
flow-soil = suelo suelto
flow-ridge = bordo
flow-bed = cama firme
flow-taped = cama con cinta
flow-draped = plástico sobre el lomo
flow-tight = plástico tenso
flow-covered = bordes cubiertos
flow-closed = cama terminada
do-soil = los discos arriman suelo en todo el ancho.
do-flat = empareje la franja y afírmela. Sin terrones ni huecos.
do-form = el molde la forma y la aprieta. Sin terrones ni hueco en el centro.
do-tape = sale del carrete, goteros hacia arriba, a {} de profundidad.
do-film = se desenrolla sobre el lomo.
do-tight = las ruedas sujetan los bordes y tensan el plástico.
do-cover = los discos echan suelo sobre los bordes, al menos {}.
do-end = pare, corte, entierre la punta; deje {} de cinta.
by-hand-bed = cordel de los dos lados; levante y apriete la cama con rastrillo, abra una zanja a cada lado.
by-hand-tape = extendida y recta, goteros hacia arriba, a {} de profundidad.
by-hand-film = desenrolle un tramo corto, los bordes en las zanjas.
by-hand-tight = se tensa con el pie; puntos de anclaje frente a frente.
by-hand-cover = llene las dos zanjas con el azadón ancho, al menos {}.

people-driver = Quien maneja ve a todos antes de moverse.
people-start = Al comienzo: la segunda persona se para atrás y al lado, los pies sobre la punta del plástico, y entierra {} antes de que avance el tractor.
people-never = Nunca entre el tractor y la máquina, nunca delante de las ruedas. Nadie va montado.
people-walk = Después camine {} atrás y mire bordes, cinta y huecos.
people-third = Una tercera persona al otro extremo corta y entierra.

check-edge = Jale el borde: no se levanta.
check-tape = Busque la cinta: está, no está torcida, goteros hacia arriba.
check-bed = Altura y lomo como se fijó; el dedo no deja onda en el plástico.

fault-loose = Plástico flojo: más peso en las ruedas, más despacio, tienda a la hora tibia.
fault-loose-hand = Plástico flojo: jale otra vez, pise el borde, tienda a la hora tibia.
fault-tear = Se rompe en el hombro: menos tensión, hombros redondos, quite piedras.
fault-edge = El borde se levanta: discos más hondos, más suelo, más despacio. Tápelo ya con pala.
fault-edge-hand = El borde se levanta: zanja más honda, más suelo. Tápelo ya con pala.
fault-twist = Cinta torcida: pare, enderécela, suelte el carrete.
fault-low = Partes bajas: rellene y apriete antes de tender el plástico.
fault-dry = Fin de la cama seco: purgue, busque un doblez o fuga, mida la presión al final.

care-tractor = Pare la toma de fuerza, baje la máquina y saque la llave antes de tocarla.
care-knife = Corte hacia afuera. Guantes.
care-lift = Un rollo pesa {}. Personas para levantarlo: {}.
care-lift-loader = Un rollo pesa {}: demasiado para tres personas. Use un cargador.
care-heat = Agua, sombra y un compañero. Confusión o piel caliente: pare y pida ayuda.
care-flame = El soplete puede prender el plástico y el pasto: agua a la mano.
care-treated = Suelo tratado: solo lo que permiten la etiqueta y el aplicador con licencia.
`)
