// picture.js hands a drawing out as a picture that every mail shows: it is drawn onto a
// canvas and saved as PNG. Without script the link leads to the drawing itself.
(() => {
  "use strict";
  const wide = 1200;
  addEventListener("click", (event) => {
    const link = event.target.closest?.("a[data-picture]");
    if (!link) return;
    event.preventDefault();
    const drawing = new Image();
    drawing.onload = () => {
      const canvas = document.createElement("canvas");
      canvas.width = wide;
      canvas.height = Math.round(wide * drawing.height / drawing.width);
      const paper = canvas.getContext("2d");
      paper.fillStyle = "#fff";
      paper.fillRect(0, 0, canvas.width, canvas.height);
      paper.drawImage(drawing, 0, 0, canvas.width, canvas.height);
      const save = document.createElement("a");
      save.download = link.dataset.picture + ".png";
      save.href = canvas.toDataURL("image/png");
      save.click();
    };
    drawing.onerror = () => { location.href = link.href; };
    drawing.src = link.href;
  });
})();
