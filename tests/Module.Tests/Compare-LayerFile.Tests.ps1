BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Compare-LayerFile' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        $before = Copy-Fixture groups-nested (Join-Path $folder 'before/hero.psd')
        $now = Copy-Fixture groups-nested (Join-Path $folder 'now/hero.psd')
        Push-Location -LiteralPath $folder
    }

    AfterEach { Pop-Location }

    It 'says of each layer and group that it is the same' {
        $results = @(Compare-LayerFile before/hero.psd now/hero.psd)
        $results.Count | Should -Be 8
        $results.Change | Select-Object -Unique | Should -Be 'Same'
        Compare-LayerFile before/hero.psd now/hero.psd -ExcludeSame | Should -BeNullOrEmpty
    }

    It 'has what breaks a rig on top, pending edits included' {
        $file = Get-LayerFile $now
        $file | Set-Layer -LiteralLayerPath 'Figure/Head/Head' -Opacity 40 > $null
        $file | Rename-Layer -LiteralLayerPath 'Figure/Body' -NewName 'Torso' > $null
        $results = @(Compare-LayerFile $before $file -ExcludeSame)
        $results.Change | Should -Be 'Renamed', 'Reblended'
        ($results[0].OldLayerPath, $results[0].LayerPath, $results[0].Breaks) | Should -Be 'Figure/Body', 'Figure/Torso', "It was called 'Body'."
        $results[1].Breaks | Should -BeNullOrEmpty
    }

    It 'takes files from the pipeline and items of the disk' {
        (Get-LayerFile $now | Compare-LayerFile $before).Count | Should -Be 8
        (Get-ChildItem now/*.psd | Compare-LayerFile (Get-Item $before)).Count | Should -Be 8
    }

    It 'compares folders by file name, and tells which files have no partner' {
        Copy-Fixture ag-text (Join-Path $folder 'before/gone.psd') > $null
        Copy-Fixture ag-text (Join-Path $folder 'now/new.psd') > $null
        $result = Get-Streams { Compare-LayerFile before now }
        $result.Output.Count | Should -Be 8
        $result.Warnings | Should -HaveCount 2
        $result.Warnings[0] | Should -BeLike '*new.psd: There is no file of this name*'
        $result.Warnings[1] | Should -BeLike '*gone.psd: Nothing was compared with it.'
    }

    It 'has an error for a damaged file, and goes on' {
        Set-Content before/bad.psd 'not a layered file'
        Set-Content now/bad.psd 'not a layered file'
        $result = Get-Streams { Compare-LayerFile before now }
        $result.Errors | Should -HaveCount 1
        $result.Output.Count | Should -Be 8
    }

    It 'ends at once where there is nothing to compare with' {
        { Compare-LayerFile nothing.psd $now } | Should -Throw '*no such file*'
        New-Item empty -ItemType Directory > $null
        { Compare-LayerFile empty $now } | Should -Throw '*no layered files*' -ErrorId 'NoFiles*'
    }

    It 'keeps to limits' {
        (Get-Streams { Compare-LayerFile $before $now -Limit @{ Layers = 2 } }).Errors | Should -HaveCount 1
        { Compare-LayerFile $before $now -Limit @{ Layer = 2 } } | Should -Throw '*is not a limit*'
    }

    It 'shows a table that fits 120 columns, also of what came from another process' {
        $file = Get-LayerFile $now
        $file | Rename-Layer -LiteralLayerPath 'Figure/Body' -NewName 'Torso' > $null
        $results = Compare-LayerFile $before $file
        $text = $results | Out-String -Width 120
        $text | Should -Match 'Change\s+Layer\s+Moved \(px\)\s+Size \(%\)\s+Painted \(%\)\s+Breaks'
        $text | Should -Match 'renamed\s+Figure/Body -> Figure/Torso\s+It was called'
        [System.Management.Automation.PSSerializer]::Deserialize([System.Management.Automation.PSSerializer]::Serialize($results)) | Out-String -Width 120 | Should -Be $text
    }

    Context '-Picture' {
        BeforeEach {
            # The same figure made smaller in two ways: its four parts have the same places and other pixels.
            $old = Get-LayerFile $before | Resize-LayerFile -Percent 40 -Filter Area
            $new = Get-LayerFile $now | Resize-LayerFile -Percent 40 -Filter CatmullRom
        }

        It 'writes a picture of each part that was repainted, in place of figures' {
            (Compare-LayerFile $old $new | Where-Object Change -EQ Repainted).Count | Should -Be 4
            $pictures = Compare-LayerFile $old $new -Picture pictures
            $pictures | Should -BeOfType ([IO.FileInfo])
            $pictures.Name | Sort-Object | Should -Be 'Arm L.png', 'Body.png', 'Eye L.png', 'Head.png'
            $pictures[0].Directory.FullName | Should -Be (Join-Path $folder 'pictures/hero')
        }

        It 'leaves pictures alone that exist, unless -Force is given' {
            Compare-LayerFile $old $new -Picture pictures > $null
            Set-Content pictures/hero/Body.png mine
            (Get-Streams { Compare-LayerFile $old $new -Picture pictures }).Errors[0].ToString() | Should -BeLike '*Use -Force*'
            Get-Content pictures/hero/Body.png | Should -Be mine
            (Compare-LayerFile $old $new -Picture pictures -Force).Count | Should -Be 4
            (Get-Item pictures/hero/Body.png).Length | Should -BeGreaterThan 1000
        }

        It 'writes nothing with -WhatIf, or where nothing was repainted' {
            Compare-LayerFile $old $new -Picture pictures -WhatIf | Should -BeNullOrEmpty
            Compare-LayerFile $before $now -Picture pictures | Should -BeNullOrEmpty
            Test-Path pictures | Should -BeFalse
        }
    }
}
