package app

import (
	"strconv"
	"strings"

	"filmfurrow/rules/unit"
)

// spanishError is what stands beside a figure of the day that cannot be read.
func spanishError(allowed string) string {
	return "Escriba un número, de " + strings.Replace(allowed, " to ", " a ", 1) + "."
}

const spanishMonths = "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre"

func spanishDay(d unit.Date) string {
	_, month, day := d.Civil()
	return strconv.Itoa(day) + " de " + strings.Fields(spanishMonths)[month-1]
}

// spanishHead is the line above the sheet on paper.
func (p *layingPart) spanishHead() string {
	w := &p.S.advice.WaitPlan
	year, _, _ := w.PlantOn.Civil()
	return p.S.fieldName() + ": " + cropSpanish(p.S.c.Crop) + ", tender el " + spanishDay(w.LayOn) + ", plantar el " + spanishDay(w.PlantOn) + " de " + strconv.Itoa(year) + p.S.beds("es")
}

// bedSpanish puts the words of the bed's drawing into Spanish, by the terms of the
// sheet.
var bedSpanish = strings.NewReplacer("bed top ", "ancho arriba ", " high<", " de alto<", "flat bed", "sin cama", " buried<", " enterrados<", "each side<", "de cada lado<", "roots and wet zone ", "raíces y zona húmeda ",
	">tape ", ">cinta a ", ">emitters ", ">goteros cada ", " deep<", " de hondo<",
	">black", ">negro", ">clear", ">claro", ">white-", ">blanco-", ">silver-", ">plateado-", ">red", ">rojo", ">blue", ">azul", ">paper", ">papel", ">mulch", ">", ">film", ">", " film<", "<", "on-<", "sobre-<", ">soil-", ">bio", ">biodegradable", ">degradable", ">infrared-", ">infra-", ">transmitting", ">rrojo")

// cropSpanish names a crop; the names are from memory.
func cropSpanish(id string) string {
	_, rest, _ := strings.Cut(cropsSpanish, ";"+id+"=")
	name, _, _ := strings.Cut(rest, ";")
	return name
}

const cropsSpanish = ";tomato=tomate;bell-pepper=pimiento;hot-pepper=chile;eggplant=berenjena;tomatillo=tomatillo;okra=okra;muskmelon=melón;watermelon=sandía;seedless-watermelon=sandía sin semilla;cucumber=pepino;summer-squash=calabacita;winter-squash=calabaza;pumpkin=calabaza;sweet-corn=maíz dulce;sweet-potato=camote;strawberry=fresa;broccoli=brócoli;cauliflower=coliflor;cabbage=repollo;brussels-sprouts=coles de Bruselas;kale=col rizada;collard=berza;chard=acelga;lettuce=lechuga;spinach=espinaca;salad-greens=hojas de ensalada;celery=apio;onion=cebolla;garlic=ajo;leek=puerro;snap-bean=ejote;pea=chícharo;beet=betabel;carrot=zanahoria;potato=papa;ginger=jengibre;basil=albahaca;parsley=perejil;zinnia=zinnia;celosia=celosía;sunflower=girasol;snapdragon=perritos;lisianthus=lisianthus;dahlia=dalia;statice=statice;gomphrena=amaranto globoso;china-aster=áster de China;ageratum=agérato;stock=alhelí;marigold=cempasúchil;"
